package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

/**
 * The program started in a locale of its own, with files whose names have other letters than
 * English, in UTF-8 and in Latin-1. Names are written in octal, for this very Java may run in any
 * locale.
 */
@EnabledOnOs(OS.LINUX)
class FileNamesTest {

  /** "Grüße ± η" in UTF-8. */
  private static final String UTF8 = "Gr\\303\\274\\303\\237e \\302\\261 \\316\\267";

  /** "café" in Latin-1. */
  private static final String LATIN1 = "caf\\351";

  @TempDir Path folder;

  @BeforeEach
  void workbooks() throws Exception {
    Grid.sheet("Bench")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("Crank arm", 172.5, "mm", 0.5, "Fine marks, two ends.")
        .xlsx(folder.resolve("ada.xlsx"));
    Files.copy(
        Path.of("../../sample-workbooks/workbooks/first-lab-table.ods"), folder.resolve("ada.ods"));
  }

  private record Run(int status, String out, String err) {}

  /** Runs lines of a shell in which {@code checker} is the program. */
  private Run shell(String locale, String... lines) throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String script =
        String.join(
            "\n",
            "checker() { LC_ALL=" + locale + " '" + java + "' -cp '" + classPath() + "' \\",
            "  " + Main.class.getName() + " \"$@\"; }",
            "cd '" + folder + "'",
            String.join("\n", lines));
    Path file = Files.writeString(folder.resolve("run.sh"), script);
    ProcessBuilder builder = new ProcessBuilder("sh", file.toString());
    builder.environment().remove("TENTHMARK_STARTED_ANEW");
    Process process =
        builder
            .redirectOutput(folder.resolve("out.txt").toFile())
            .redirectError(folder.resolve("err.txt").toFile())
            .start();
    return new Run(process.waitFor(), read("out.txt"), read("err.txt"));
  }

  private static String classPath() {
    return Stream.of(System.getProperty("java.class.path").split(":", -1))
        .map(entry -> Path.of(entry).toAbsolutePath().toString())
        .collect(Collectors.joining(":"));
  }

  private String read(String name) throws Exception {
    return new String(Files.readAllBytes(folder.resolve(name)), StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ods", "xlsx"})
  void areReadInTheLocaleOfCron(String ending) throws Exception {
    Run run =
        shell(
            "C",
            "name=\"$(printf '" + UTF8 + "')." + ending + "\"",
            "mv ada." + ending + " \"$name\"",
            "checker check --out reports \"$name\"");

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Gr\u00FC\u00DFe \u00B1 \u03B7." + ending + ": 0 errors");
    assertThat(run.status()).isZero();
    assertThat(read("reports/class.html")).contains("Gr\u00FC\u00DFe \u00B1 \u03B7." + ending);
  }

  @Test
  void areFoundInAFolderInTheLocaleOfCron() throws Exception {
    Run run =
        shell(
            "C",
            "mkdir \"$(printf 'St\\303\\274nde')\"",
            "mv ada.* \"$(printf 'St\\303\\274nde')\"",
            "checker check \"$(printf 'St\\303\\274nde')\"");

    assertThat(run.out()).contains("St\u00FCnde/ada.ods: 0 errors").contains("2 files checked");
    assertThat(run.status()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"C", "C.UTF-8"})
  void areReadInLatin1(String locale) throws Exception {
    Run run =
        shell(
            locale,
            "mkdir in; for e in ods xlsx; do mv ada.$e \"in/$(printf '" + LATIN1 + "').$e\"; done",
            "checker check --out reports \"in/$(printf '" + LATIN1 + "').ods\" in && ",
            "checker plain \"in/$(printf '"
                + LATIN1
                + "').ods\" --out plain.ods && ls reports/workbooks/*");

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("2 files checked").contains("feedback.html");
    assertThat(run.status()).isZero();
    assertThat(folder.resolve("plain.ods")).isNotEmptyFile();
  }

  @Test
  void keepTheStatusAndTheSignsOfTheCommandLine() throws Exception {
    Run run = shell("C", "checker check \"no 'such' \\\\file\\\" @x.ods\" @y");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err())
        .contains("no 'such' \\file\" @x.ods: cannot be checked: no such file or folder")
        .contains("@y: cannot be checked");
  }

  @Test
  void thatMayBeSeveralFilesAreAskedFor() throws Exception {
    Run run =
        shell(
            "C.UTF-8",
            "mv ada.ods \"$(printf 'caf\\351').ods\"; cp \"$(printf 'caf\\351').ods\" \"$(printf"
                + " 'caf\\350').ods\"",
            "checker check \"$(printf 'caf\\351').ods\"");

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("may be several files, whose names are not in UTF-8");
  }

  @Test
  void thatTheLocaleDoesNotKnowAreRefusedWithWhatToDo() throws Exception {
    Run run =
        shell(
            "C",
            "export TENTHMARK_STARTED_ANEW=yes",
            "mv ada.ods \"$(printf '" + UTF8 + "').ods\"",
            "checker check \"$(printf '" + UTF8 + "').ods\"");

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("has letters that the locale does not know; set LC_ALL=C.UTF-8");
    assertThat(List.of(run.err().split("\n", -1))).hasSizeLessThanOrEqualTo(2);
  }
}
