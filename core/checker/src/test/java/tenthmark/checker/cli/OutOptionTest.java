package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.output.FolderLock;
import tenthmark.checker.workbook.Grid;

/** Students and numbers are invented. */
class OutOptionTest {

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void aWorkbook() {
    Grid.sheet("Bench")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("Crank arm", 172.5, null, 0.5, "Fine marks, two ends.")
        .xlsx(folder.resolve("ada.xlsx"));
  }

  private int check(Path target) {
    return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
        .execute("check", "--out", target.toString(), folder.toString());
  }

  @Test
  void writesReportsBesideTheResults() {
    assertThat(check(folder.resolve("out"))).isEqualTo(1);

    assertThat(folder.resolve("out/workbooks/ada.xlsx/feedback.html")).isNotEmptyFile();
    assertThat(out.toString()).contains("1 file checked");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void doesNotCheckItsOwnReports() {
    check(folder.resolve("out"));
    out.getBuffer().setLength(0);

    assertThat(check(folder.resolve("out"))).isEqualTo(1);

    assertThat(out.toString()).contains("1 file checked");
  }

  @Test
  void knowsItsReportsBehindALink() throws Exception {
    Files.createDirectories(folder.resolve("out"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("out"));
    check(link);
    out.getBuffer().setLength(0);

    check(link);

    assertThat(out.toString()).contains("1 file checked");
  }

  @Test
  void saysThatItLeavesNothingToCheck() {
    assertThat(check(folder)).isEqualTo(3);

    assertThat(err.toString()).contains("all that is to be checked lies in --out " + folder);
    assertThat(folder).isDirectoryNotContaining("glob:**.html");
  }

  @Test
  void hasRoomForNamesAsLongAsTheyMayBe() throws Exception {
    String name = "n".repeat(250) + ".xlsx";
    Files.move(folder.resolve("ada.xlsx"), folder.resolve(name));

    check(folder.resolve("out"));

    assertThat(err.toString()).isEmpty();
    assertThat(folder.resolve("out/workbooks").resolve(name).resolve(name)).isNotEmptyFile();
  }

  @Test
  void writesReportsOnTheClass() {
    check(folder.resolve("out"));

    assertThat(List.of("class.html", "gradebook.csv", "findings.json", "junit.xml"))
        .allSatisfy(name -> assertThat(folder.resolve("out").resolve(name)).isNotEmptyFile());
  }

  @Test
  void saysBeforeItChecksThatTheFolderCannotBeMade() throws Exception {
    Path taken = Files.writeString(folder.resolve("out.txt"), "a file, no folder");

    assertThat(check(taken)).isEqualTo(3);

    assertThat(err.toString()).startsWith(taken.toString()).contains("cannot be read or written: ");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void saysWhenAReportCannotBeWritten() throws Exception {
    Files.createDirectories(folder.resolve("out"));
    Files.writeString(folder.resolve("out/workbooks"), "a file, no folder");

    assertThat(check(folder.resolve("out"))).isEqualTo(2);

    assertThat(err.toString()).contains("ada.xlsx: its page cannot be written: ");
    assertThat(out.toString()).contains("1 file checked");
  }

  /** A report whose name is taken by a folder that is not empty cannot be written. */
  private void take(String name) throws Exception {
    Files.createDirectories(folder.resolve("out").resolve(name).resolve("taken"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"class.html", "gradebook.csv", "findings.json", "junit.xml"})
  void namesTheClassReportThatCannotBeWrittenAndWritesTheOthers(String name) throws Exception {
    take(name);

    assertThat(check(folder.resolve("out"))).isEqualTo(2);

    assertThat(err.toString().lines())
        .singleElement()
        .asString()
        .startsWith(folder.resolve("out") + ": " + name + " cannot be written: ");
    assertThat(List.of("class.html", "gradebook.csv", "findings.json", "junit.xml"))
        .filteredOn(other -> !other.equals(name))
        .allSatisfy(other -> assertThat(folder.resolve("out").resolve(other)).isNotEmptyFile());
  }

  @Test
  void namesThePageThatCannotBeWrittenAndWritesTheCopy() throws Exception {
    take("workbooks/ada.xlsx/feedback.html");

    assertThat(check(folder.resolve("out"))).isEqualTo(2);

    assertThat(err.toString()).contains("ada.xlsx: its page cannot be written: ");
    assertThat(folder.resolve("out/workbooks/ada.xlsx/ada.xlsx")).isNotEmptyFile();
    assertThat(folder.resolve("out/class.html")).isNotEmptyFile();
  }

  @Test
  void hasTheFolderForItself() throws Exception {
    Path reports = folder.resolve("out");
    FolderLock other = FolderLock.take(reports).orElseThrow();
    assertThat(check(reports)).isEqualTo(3);
    other.close();
    assertThat(err.toString()).startsWith(reports + ": another check writes its reports there");
    assertThat(out.toString()).isEmpty();
    assertThat(reports.resolve("class.html")).doesNotExist();

    assertThat(check(reports)).isLessThan(2);
  }

  @Test
  void tellsAFolderOfReportsByItsMarkAndSaysThatItIsSkipped() throws Exception {
    check(folder.resolve("monday"));
    out.getBuffer().setLength(0);

    check(folder.resolve("tuesday"));

    assertThat(out.toString()).contains("1 file checked");
    assertThat(err.toString())
        .contains(folder.resolve("monday") + ": skipped: it holds reports of a check");
    assertThat(Files.readString(folder.resolve("tuesday/class.html")))
        .contains("1 folder was skipped, for it holds reports of a check: ")
        .contains(folder.resolve("monday").toString());
  }

  @Test
  void countsWhatWasLeftOutInJsonAndOnTheClassPage() throws Exception {
    check(folder.resolve("monday"));
    Files.writeString(folder.resolve("ben.pdf"), "no workbook");

    check(folder.resolve("tuesday"));

    JsonNode json =
        new ObjectMapper().readTree(Files.readString(folder.resolve("tuesday/findings.json")));
    assertThat(json.get("skippedFolders"))
        .extracting(JsonNode::asText)
        .containsExactly(folder.resolve("monday").toString());
    assertThat(json.get("notWorkbooks"))
        .extracting(JsonNode::asText)
        .containsExactly(folder.resolve("ben.pdf").toString());
    assertThat(Files.readString(folder.resolve("tuesday/class.html")))
        .contains("1 file is no workbook and was not checked: ");
  }

  @Test
  void checksWorkbooksThatLieAsReportsDoWithoutTheMark() throws Exception {
    Path like = Files.createDirectories(folder.resolve("team/workbooks"));
    Files.copy(folder.resolve("ada.xlsx"), like.resolve("ben.xlsx"));
    Files.writeString(folder.resolve("team/class.html"), "notes of a team");

    check(folder.resolve("out"));

    assertThat(out.toString()).contains("2 files checked");
  }
}
