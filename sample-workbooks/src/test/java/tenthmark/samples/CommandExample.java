package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A command and what it prints, as a page shows them in a block of code marked {@code console}: the
 * command behind a dollar sign, its output in the lines below; a line {@code ...} stands for lines
 * that are left out.
 */
record CommandExample(String command, List<String> output) {

  private static final String CHECKER = "tenthmark-checker";
  private static final String LEFT_OUT = "...";

  /** The commands of a page, in order. */
  static List<CommandExample> of(MarkdownPage page) {
    List<CommandExample> commands = new ArrayList<>();
    for (String block : page.blocks("console")) {
      for (String line : block.lines().toList()) {
        if (line.startsWith("$ ")) {
          commands.add(new CommandExample(line.substring(2), new ArrayList<>()));
        } else {
          commands.get(commands.size() - 1).output().add(line);
        }
      }
    }
    return commands;
  }

  /** Runs the command in a folder and compares what it prints, messages included. */
  void check(Path folder) throws IOException, InterruptedException {
    assertThat(differences(run(folder).lines().toList())).as(command).isEmpty();
  }

  /** Each line of the page that is not printed there, beside the line that is. */
  private List<String> differences(List<String> printed) {
    List<String> differences = new ArrayList<>();
    List<List<String>> parts = parts();
    int next = 0;
    for (int i = 0; i < parts.size(); i++) {
      List<String> part = parts.get(i);
      int start = i == 0 ? 0 : start(part, printed, next + 1);
      boolean last = i > 0 && i == parts.size() - 1 && !part.isEmpty();
      next = last ? Math.max(next + 1, printed.size() - part.size()) : start;
      for (String line : part) {
        String other = next < printed.size() ? printed.get(next) : "(nothing)";
        if (!line.equals(other)) {
          differences.add("\nthe page: " + line + "\nprinted:  " + other);
        }
        next++;
      }
    }
    if (parts.size() == 1 && next < printed.size()) {
      differences.add("\nprinted besides: " + printed.get(next));
    }
    return differences;
  }

  /** The lines between those that are left out. */
  private List<List<String>> parts() {
    List<List<String>> parts = new ArrayList<>(List.of(new ArrayList<>()));
    for (String line : output) {
      if (line.equals(LEFT_OUT)) {
        parts.add(new ArrayList<>());
      } else {
        parts.get(parts.size() - 1).add(line);
      }
    }
    return parts;
  }

  /** Where most lines of a part are printed, at or after a line. */
  private static int start(List<String> part, List<String> printed, int from) {
    return IntStream.range(from, Math.max(from + 1, printed.size()))
        .boxed()
        .max(
            Comparator.comparingLong((Integer start) -> same(part, printed, start))
                .thenComparing(Comparator.reverseOrder()))
        .orElse(from);
  }

  private static long same(List<String> part, List<String> printed, int start) {
    return IntStream.range(0, part.size())
        .filter(i -> start + i < printed.size())
        .filter(i -> printed.get(start + i).equals(part.get(i)))
        .count();
  }

  private String run(Path folder) throws IOException, InterruptedException {
    List<String> words = List.of(command.split(" "));
    Stream<String> program =
        words.get(0).equals(CHECKER)
            ? Stream.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "tenthmark.checker.cli.Main")
            : Stream.of(words.get(0));
    Process process =
        new ProcessBuilder(Stream.concat(program, words.stream().skip(1)).toList())
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return printed;
  }
}
