package tenthmark.checker.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.cli.Main;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.XlsxFile;

/** Batches in a virtual machine of their own, one of whose files exhausts its memory. */
class NeighboursTest {

  private static final int NEIGHBOURS = 8;
  private static final String FAULTY = "1 error, 0 warnings, 0 notes; 1 record read";

  @TempDir Path handedIn;
  @TempDir Path folder;

  @Test
  void ofAFileThatExhaustsTheMemoryAreCheckedAllTheSame() throws Exception {
    for (int number = 0; number < NEIGHBOURS; number++) {
      faulty().xlsx(handedIn.resolve("student-%02d.xlsx".formatted(number)));
    }
    // Among the first in the order of names, so that it runs beside the others.
    Path large = many(430_000).write(handedIn.resolve("student-01-large.xlsx"));

    List<String> lines = check("-Xmx48m", 2);

    assertThat(lines)
        .contains(large + ": cannot be checked: it needs more memory than the checker has")
        .filteredOn(line -> line.endsWith(": " + FAULTY))
        .hasSize(NEIGHBOURS);
  }

  @Test
  void thatTogetherExhaustTheMemoryAreCheckedOneAfterTheOther() throws Exception {
    many(100_000).write(handedIn.resolve("one.xlsx"));
    many(100_000).write(handedIn.resolve("other.xlsx"));

    assertThat(check("-Xmx64m", 2))
        .contains(
            "2 files checked, 2 errors, 0 warnings, 2 notes; 0 records read, 200000 numbers not"
                + " read");
  }

  /** POI builds a document of the whole file, the check does not. */
  @Test
  void ofWhichNoCopyCanBeMadeKeepTheirFindings() throws Exception {
    Grid rows = Grid.sheet("Lab");
    for (int row = 0; row < 1_000; row++) {
      rows.row(Collections.nCopies(60, 1.5).toArray());
    }
    withFault(rows.row());
    Path large = rows.xlsx(handedIn.resolve("a.xlsx"));
    faulty().xlsx(handedIn.resolve("b.xlsx"));
    Path out = folder.resolve("out");

    List<String> lines = check("-Xmx56m", 2, "--out", out.toString());

    assertThat(lines)
        .contains(
            large + ": 1 error, 0 warnings, 1 note; 1 record read, 60000 numbers not read",
            large
                + ": its annotated copy cannot be written: it needs more memory than the checker"
                + " has",
            "2 files checked, 2 errors, 0 warnings, 1 note; 2 records read, 60000 numbers not"
                + " read");
    assertThat(out.resolve("workbooks/a.xlsx/feedback.html")).content().contains("unit-missing");
    assertThat(out.resolve("workbooks/a.xlsx/a.xlsx")).doesNotExist();
    assertThat(out.resolve("workbooks/b.xlsx/b.xlsx")).isNotEmptyFile();
  }

  private static Grid faulty() {
    return withFault(Grid.sheet("Lab"));
  }

  private static Grid withFault(Grid sheet) {
    return sheet
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("Crank arm", 172.5, null, 0.5, "Fine marks, both ends judged by eye.");
  }

  /** A workbook of so many numbers. */
  private static XlsxFile many(int cells) {
    String row = "<row>" + "<c><v>1.5</v></c>".repeat(100) + "</row>";
    return XlsxFile.rows(row.repeat(cells / 100));
  }

  /** What a check prints, messages included. */
  private List<String> check(String heap, int threads, String... options) throws Exception {
    Path output = folder.resolve("output.txt");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(heap, "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(Main.class.getName(), "check", "--time-limit", "600"));
    command.addAll(List.of("--threads", String.valueOf(threads), handedIn.toString()));
    command.addAll(List.of(options));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    try {
      assertThat(process.waitFor(20, TimeUnit.MINUTES)).isTrue();
    } finally {
      process.destroyForcibly();
    }
    return Files.readAllLines(output);
  }
}
