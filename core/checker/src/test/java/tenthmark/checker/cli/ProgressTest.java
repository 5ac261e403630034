package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tenthmark.checker.report.Contents;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.LeftOut;
import tenthmark.checker.wording.CheckerTexts;

class ProgressTest {

  private static final String CLEAR = "\r\u001b[K";

  private final StringWriter screen = new StringWriter();
  private final PrintWriter terminal = new PrintWriter(screen, true);

  private void check() {
    CheckOutput output =
        new CheckOutput(
            CheckOutput.Format.TEXT,
            false,
            CheckerTexts.english(),
            terminal,
            terminal,
            Optional.of(new Progress(terminal, 2)));
    output.file(FileReport.checked(Path.of("a.ods"), Contents.NONE, List.of()));
    output.file(FileReport.unchecked(Path.of("b.ods"), "the file is empty (0 bytes)"));
    output.end(LeftOut.NOTHING);
  }

  @Test
  void standsBelowTheResultsAndIsGoneAtTheEnd() {
    check();

    assertThat(screen.toString().replace(System.lineSeparator(), "\n"))
        .isEqualTo(
            CLEAR
                + "a.ods: 0 errors, 0 warnings, 0 notes; 0 records read\n"
                + CLEAR
                + "[###############...............] 1 of 2"
                + CLEAR
                + "b.ods: cannot be checked: the file is empty (0 bytes)\n"
                + CLEAR
                + "[##############################] 2 of 2"
                + CLEAR
                + "1 file checked, 0 errors, 0 warnings, 0 notes, 1 could not be checked; 0 records"
                + " read\n");
  }
}
