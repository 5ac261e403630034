package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

class HelpTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private static CommandLine checker(StringWriter out, StringWriter err) {
    return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private static Stream<CommandLine> withSubcommands(CommandLine command) {
    return Stream.concat(
        Stream.of(command),
        command.getSubcommands().values().stream().flatMap(HelpTest::withSubcommands));
  }

  /** Our own commands; the one that generates the completion is the library's. */
  static Stream<String> commands() {
    return withSubcommands(checker(new StringWriter(), new StringWriter()))
        .map(command -> command.getCommandSpec().qualifiedName())
        .filter(name -> !name.endsWith("generate-completion"));
  }

  static Stream<String> examples() {
    return withSubcommands(checker(new StringWriter(), new StringWriter()))
        .filter(command -> !command.getCommandName().equals("generate-completion"))
        .flatMap(command -> Arrays.stream(command.getCommandSpec().usageMessage().footer()))
        .map(String::strip);
  }

  private static String[] arguments(String line) {
    return line.replaceFirst("^tenthmark-checker ?", "").strip().split(" ");
  }

  @ParameterizedTest
  @MethodSource("commands")
  void hasTheSectionsOfAManualPage(String command) {
    String[] arguments = arguments(command + " --help");

    assertThat(checker(out, err).execute(arguments)).isZero();

    assertThat(out.toString())
        .contains("Usage:", "Description:", "Options:", "Exit status:", "Examples:", "-h, --help");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
    assertThat(err.toString()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void wrapsWholeParagraphsAndNoHalfOnes(String command) {
    CommandLine described = checker(out, err);
    for (String name : arguments(command)) {
      described = name.isEmpty() ? described : described.getSubcommands().get(name);
    }

    assertThat(described.getCommandSpec().usageMessage().description())
        .isNotEmpty()
        .allMatch(paragraph -> paragraph.isEmpty() || paragraph.endsWith("."));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void givesExamplesThatAreRightCommandLines(String example) {
    assertThat(example).startsWith("tenthmark-checker ");
    assertThatCode(() -> checker(out, err).parseArgs(arguments(example)))
        .doesNotThrowAnyException();
  }

  @Nested
  class AWrongCommandLine {

    @ParameterizedTest
    @CsvSource({
      "explain no-such-rule, there is no rule no-such-rule;, tenthmark-checker explain --help",
      "check --threads 0 ., --threads is 0 but must be at least 1, tenthmark-checker check --help",
      "explain, Missing required parameter: 'RULE', tenthmark-checker explain --help",
      "chekc ., Unmatched argument, tenthmark-checker --help"
    })
    void isToldInALineWithTheWayToHelp(String line, String problem, String help) {
      assertThat(checker(out, err).execute(line.split(" "))).isEqualTo(3);
      String first = err.toString().lines().findFirst().orElseThrow();
      assertThat(first).startsWith(problem).endsWith("(see " + help + ")");
      assertThat(err.toString()).doesNotContain("Usage:");
      assertThat(out.toString()).isEmpty();
    }

    @Test
    void withoutACommandIsAnsweredWithAllCommands() {
      assertThat(checker(out, err).execute()).isEqualTo(3);
      assertThat(err.toString()).contains("Usage:", "check", "explain");
    }
  }

  @Nested
  class Completion {

    @TempDir Path folder;

    @Test
    void offersCommandsOptionsAndRules() throws Exception {
      assertThat(checker(out, err).execute("generate-completion")).isZero();
      Path script = Files.writeString(folder.resolve("completion"), out.toString());

      assertThat(completed(script, "tenthmark-checker", "")).contains("check", "explain", "plain");
      assertThat(completed(script, "tenthmark-checker", "check", "--ch"))
          .containsExactly("--changed-only");
      assertThat(completed(script, "tenthmark-checker", "explain", "total"))
          .containsExactly("total-differs", "total-short");
    }

    /** What bash offers for the last of the words. */
    private Set<String> completed(Path script, String... words) throws Exception {
      String line =
          "compopt() { :; }; source "
              + script
              + "; COMP_WORDS=('"
              + String.join("' '", words)
              + "'); COMP_CWORD="
              + (words.length - 1)
              + "; _complete_tenthmark-checker; printf '%s\\n' \"${COMPREPLY[@]}\"";
      Process bash = new ProcessBuilder("bash", "-c", line).redirectErrorStream(true).start();
      String reply = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(bash.waitFor()).as(reply).isZero();
      return new TreeSet<>(reply.lines().toList());
    }
  }
}
