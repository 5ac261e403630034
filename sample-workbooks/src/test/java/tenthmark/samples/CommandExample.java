package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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
    String expected =
        output.stream()
            .map(line -> line.equals(LEFT_OUT) ? "(?:.*\n)+?" : Pattern.quote(line) + "\n")
            .collect(Collectors.joining());
    assertThat(run(folder)).as(command).matches(expected);
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
