package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.workbook.Grid;

/** Where files cannot grow, the findings are not lost, or it is said that they are. */
@EnabledOnOs(OS.LINUX)
class FullDiskTest {

  private static final int WORKBOOKS = 12;

  @TempDir Path handedIn;
  @TempDir Path folder;

  @BeforeEach
  void handIn() {
    for (int number = 0; number < WORKBOOKS; number++) {
      Grid.sheet("Bench")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Crank arm", 172.5, null, 0.5, "Fine marks, two ends.")
          .xlsx(handedIn.resolve("student-%02d.xlsx".formatted(number)));
    }
  }

  /** The exit status of a check whose files may have so many blocks of 512 bytes. */
  private int check(int blocks, File out, String... options) throws Exception {
    List<String> command = new ArrayList<>();
    command.addAll(List.of("sh", "-c", "ulimit -f " + blocks + " && exec \"$0\" \"$@\""));
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:-UsePerfData", "-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(Main.class.getName(), "check", handedIn.toString()));
    command.addAll(List.of(options));
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out)
            .redirectError(folder.resolve("err").toFile())
            .start();
    try {
      assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
      return process.exitValue();
    } finally {
      process.destroyForcibly();
    }
  }

  private List<String> errors() throws Exception {
    return Files.readAllLines(folder.resolve("err"));
  }

  @Test
  void isSaidOfTheResultsThatAreKeptAndTheBatchGoesOn() throws Exception {
    Path out = folder.resolve("out");
    Path state = folder.resolve("state.jsonl");

    assertThat(check(8, out.toFile(), "--quiet", "--state", state.toString())).isEqualTo(2);

    assertThat(out).hasContent("12 files checked, 12 errors, 0 warnings, 0 notes; 12 records read");
    assertThat(errors())
        .singleElement()
        .asString()
        .isEqualTo(state + ": cannot be read or written: File too large");
    assertThat(folder).isDirectoryNotContaining("glob:**.part*");
  }

  @Test
  void isSaidOfTheReportsOfEachWorkbook() throws Exception {
    Path out = folder.resolve("out");
    Path reports = folder.resolve("reports");

    assertThat(check(8, out.toFile(), "--quiet", "--out", reports.toString())).isEqualTo(2);

    assertThat(out).hasContent("12 files checked, 12 errors, 0 warnings, 0 notes; 12 records read");
    assertThat(errors())
        .filteredOn(line -> line.contains(".xlsx: its page cannot be written: File too large"))
        .hasSize(WORKBOOKS);
  }

  @Test
  void isSaidOfStandardOutput() throws Exception {
    assertThat(check(64, new File("/dev/full"))).isEqualTo(2);

    assertThat(errors()).containsExactly("the results cannot all be written to standard output");
  }
}
