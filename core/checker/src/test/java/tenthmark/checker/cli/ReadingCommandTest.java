package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.workbook.Grid;

/** Students and numbers are invented. */
class ReadingCommandTest {

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(Object... arguments) {
    return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
  }

  private static Grid table() {
    return Grid.sheet("Records")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("Crank arm", 172.5, "mm", 0.5, "Fine marks, two ends.")
        .row("Spoke", 262.5, "mm", 0.5, "Fine marks, two ends.");
  }

  private Path whole(String name) throws Exception {
    Files.createDirectories(folder.resolve(name).getParent());
    return table().xlsx(folder.resolve(name));
  }

  private Path partly(String name) {
    return table().row().row(null, 7.25).row(null, 7.5).xlsx(folder.resolve(name));
  }

  @Test
  void printsWhatWasReadAndWhatWasNot() {
    Path file = partly("ada.xlsx");

    assertThat(run("reading", file)).isEqualTo(1);

    assertThat(out.toString().lines())
        .containsExactly(
            file + ": 2 records read, 2 numbers not read",
            file
                + ": Not read on the sheet Records: B5:B6 (nothing on the sheet says what this"
                + " number is)");
  }

  @Test
  void isZeroWhereEveryNumberWasUnderstood() throws Exception {
    assertThat(run("reading", whole("ada.xlsx"))).isZero();
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void writesAPageForEachWorkbookWhereItLies() throws Exception {
    whole("monday/ada.xlsx");
    whole("tuesday/ben.xlsx");

    assertThat(run("reading", "--out", folder.resolve("out"), folder)).isZero();

    assertThat(folder.resolve("out/monday/ada.xlsx.html")).content().contains("How ada.xlsx was");
    assertThat(folder.resolve("out/tuesday/ben.xlsx.html")).isNotEmptyFile();
  }

  @Test
  void changesNoWorkbook() throws Exception {
    Path file = partly("ada.xlsx");
    byte[] before = Files.readAllBytes(file);

    run("reading", "--out", folder.resolve("out"), file);

    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void goesOnAfterAFileThatCannotBeRead() throws Exception {
    Path broken = Files.writeString(folder.resolve("a.xlsx"), "no workbook");

    assertThat(run("reading", "--out", folder.resolve("out"), broken, whole("b.xlsx")))
        .isEqualTo(2);

    assertThat(err.toString()).startsWith(broken + ": cannot be read: not a workbook");
    assertThat(folder.resolve("out/a.xlsx.html")).doesNotExist();
    assertThat(folder.resolve("out/b.xlsx.html")).isNotEmptyFile();
  }

  @Test
  void saysWhichPageCannotBeWritten() throws Exception {
    Path file = whole("ada.xlsx");
    Path taken = Files.writeString(folder.resolve("out"), "a file");

    assertThat(run("reading", "--out", taken, file)).isEqualTo(2);
    assertThat(err.toString()).startsWith(file + ": its page cannot be written: ");
  }

  @Test
  void needsAtLeastOneThread() throws Exception {
    assertThat(run("reading", "--threads", 0, whole("ada.xlsx"))).isEqualTo(3);
    assertThat(err.toString()).startsWith("--threads and --time-limit must be at least 1");
  }

  @Test
  void readsByTheHeadingsOfAProfileInItsLanguage() throws Exception {
    Path profile =
        Files.writeString(
            folder.resolve("course.yaml"), "language: de\nheadings:\n  value: Misurato\n");
    Path file =
        Grid.sheet("Valori")
            .row("Name", "Misurato [mm]", "Uncertainty [mm]")
            .row("Pedivella", 172.5, 0.5)
            .xlsx(folder.resolve("ada.xlsx"));

    assertThat(run("reading", "--profile", profile, file)).isZero();
    assertThat(out.toString()).isEqualTo(file + ": 1 Messung gelesen\n");
  }

  @Test
  void saysOfEveryCellInJsonWhatItWasTakenFor() throws Exception {
    Path file = partly("ada.xlsx");

    assertThat(run("reading", "--format", "json", file)).isEqualTo(1);

    JsonNode read = new ObjectMapper().readTree(out.toString()).at("/files/0");
    assertThat(read.path("file").asText()).isEqualTo(file.toString());
    assertThat(read.path("records").asInt()).isEqualTo(2);
    assertThat(read.path("numbersNotRead").asInt()).isEqualTo(2);
    assertThat(read.path("cells"))
        .extracting(cells -> cells.path("cells").asText() + " " + cells.path("taken").asText())
        .contains("B2:B3 value", "C2:C3 unit", "D2:D3 uncertainty")
        .contains("B5:B6 not read: nothing on the sheet says what this number is");
    assertThat(read.path("cells").findValuesAsText("read")).contains("true", "false");
  }
}
