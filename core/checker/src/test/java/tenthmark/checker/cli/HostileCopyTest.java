package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.copy.AnnotatedCopy;
import tenthmark.checker.output.ReportFolder;
import tenthmark.checker.plain.PlainCopy;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.UnreadableFileException;

/** Files made to do harm where a copy is made of them, which takes the whole document. */
@Timeout(120)
class HostileCopyTest {

  private static final int DEEP = 200_000;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int checkWithCopies() {
    return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
        .execute("check", folder.resolve("in").toString(), "--out", folder + "/out");
  }

  private Path workbook(String name) throws IOException {
    Files.createDirectories(folder.resolve("in"));
    return Grid.sheet("Records")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("Crank arm", 172.5, null, 0.5, "Fine marks, two ends.")
        .xlsx(folder.resolve("in").resolve(name));
  }

  /** Puts parts in the place of those that the file has, or beside them. */
  private static Path with(Path file, Map<String, String> parts) throws IOException {
    Path changed = file.resolveSibling("changed");
    try (ZipFile source = new ZipFile(file.toFile());
        ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(changed))) {
      for (ZipEntry entry : source.stream().toList()) {
        if (!parts.containsKey(entry.getName())) {
          zip.putNextEntry(new ZipEntry(entry.getName()));
          zip.write(source.getInputStream(entry).readAllBytes());
        }
      }
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    return Files.move(changed, file, StandardCopyOption.REPLACE_EXISTING);
  }

  private static String part(Path file, String name) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      return new String(
          zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String deep(String element) {
    return ("<" + element + ">").repeat(DEEP) + ("</" + element + ">").repeat(DEEP);
  }

  private Path copy(String name) {
    return folder.resolve("out/workbooks").resolve(name).resolve(name);
  }

  @Nested
  class ElementsNestedVeryDeeply {

    private void areCopiedBesideOthers(String hostile) throws Exception {
      workbook("ada.xlsx");
      workbook("zoe.xlsx");

      assertThat(checkWithCopies()).isEqualTo(1);

      assertThat(err.toString()).isEmpty();
      assertThat(List.of("ada.xlsx", hostile, "zoe.xlsx"))
          .allSatisfy(name -> assertThat(copy(name)).isNotEmptyFile());
    }

    @Test
    void inTheTableOfStyles() throws Exception {
      Path file = workbook("ben.xlsx");
      String styles = part(file, "xl/styles.xml");
      with(file, Map.of("xl/styles.xml", styles.replace("<fonts", deep("fonts") + "<fonts")));

      areCopiedBesideOthers("ben.xlsx");
    }

    @Test
    void behindTheCells() throws Exception {
      Path file = workbook("ben.xlsx");
      String sheet = part(file, "xl/worksheets/sheet1.xml");
      with(
          file,
          Map.of(
              "xl/worksheets/sheet1.xml",
              sheet.replace("</worksheet>", "<extLst>" + deep("ext") + "</extLst></worksheet>")));

      areCopiedBesideOthers("ben.xlsx");
    }

    /** Writing the tree uses up the stack, which must not take the findings along. */
    @Test
    void inAnOpenDocument() throws Exception {
      workbook("ada.xlsx");
      Path file =
          Files.copy(
              Path.of("src/test/resources/saved-by-calc/faulty-lab-table.ods"),
              folder.resolve("in/ben.ods"));
      String content = part(file, "content.xml");
      with(
          file,
          Map.of(
              "content.xml",
              content.replace(
                  "</office:spreadsheet>",
                  deep("table:named-expressions") + "</office:spreadsheet>")));

      checkWithCopies();

      assertThat(out.toString()).contains("ben.ods: Records.");
      assertThat(folder.resolve("out/workbooks/ben.ods/feedback.html")).isNotEmptyFile();
      assertThat(copy("ada.xlsx")).isNotEmptyFile();
      assertThat(err.toString().lines())
          .containsExactly(
              file
                  + ": its annotated copy cannot be written: the workbook cannot be annotated: its"
                  + " parts are nested too deeply");
    }
  }

  /** A file that was exchanged, or one whose report was kept from an earlier check. */
  @Nested
  class FilesThatAreOthersSinceTheCheck {

    private void isNotCopied(FileReport report, Limits limits, String line) {
      assertThatThrownBy(() -> AnnotatedCopy.of(report, CheckerTexts.english(), limits))
          .isInstanceOf(UnreadableFileException.class)
          .hasMessage(line);
    }

    @Test
    void unpackToMuch() throws Exception {
      Path file = workbook("ada.xlsx");
      FileReport report = FileChecker.load().check(file);
      with(file, Map.of("xl/drawings/drawing1.xml", " ".repeat(150 << 20)));

      isNotCopied(report, Limits.DEFAULT, "the workbook unpacks to more data than is allowed");
    }

    @Test
    void haveVeryManyCells() throws Exception {
      Path file = workbook("ada.xlsx");

      isNotCopied(
          FileChecker.load().check(file),
          Limits.DEFAULT.withCells(5),
          "the workbook holds more than 5 cells");
    }

    @Test
    void areReportedAndTheOthersCopied() throws Exception {
      Path ada = workbook("ada.xlsx");
      Path ben = workbook("ben.xlsx");
      ReportFolder reports =
          new ReportFolder(
              folder.resolve("out"), List.of(ada, ben), FileChecker.load(), CheckerTexts.english());
      FileReport first = FileChecker.load().check(ada);
      Files.writeString(ada, "PK no more");

      assertThat(reports.write(first))
          .singleElement()
          .satisfies(
              copy -> {
                assertThat(copy.line())
                    .startsWith("its annotated copy cannot be written: not a workbook");
                assertThat(copy.incomplete()).isFalse();
              });
      reports.write(FileChecker.load().check(ben));

      assertThat(copy("ada.xlsx")).doesNotExist();
      assertThat(copy("ben.xlsx")).isNotEmptyFile();
    }
  }

  /** What POI takes for an attack and we do not. */
  @Nested
  class LargeHonestFiles {

    private Path wellCompressed(String name) throws IOException {
      Path file = workbook(name);
      String rows = "<row r=\"99\"/>" + "<row><c><v>172.5</v></c></row>".repeat(8_000);
      String sheet = part(file, "xl/worksheets/sheet1.xml");
      return with(
          file,
          Map.of("xl/worksheets/sheet1.xml", sheet.replace("</sheetData>", rows + "</sheetData>")));
    }

    @Test
    void areCopiedHoweverWellTheyAreCompressed() throws Exception {
      wellCompressed("ada.xlsx");

      checkWithCopies();

      assertThat(err.toString()).isEmpty();
      assertThat(copy("ada.xlsx")).isNotEmptyFile();
    }

    @Test
    void areMadePlainHoweverWellTheyAreCompressed() throws Exception {
      Path plain = folder.resolve("plain.xlsx");

      PlainCopy.write(wellCompressed("ada.xlsx"), plain);

      assertThat(plain).isNotEmptyFile();
    }

    @Test
    void areCopiedWithAllOfMoreThanAThousandParts() throws Exception {
      Map<String, String> parts = new HashMap<>();
      for (int i = 0; i < 1_100; i++) {
        parts.put("customXml/item" + i + ".xml", "<spoke/>");
      }
      with(workbook("ada.xlsx"), parts);

      checkWithCopies();

      assertThat(err.toString()).isEmpty();
      assertThat(copy("ada.xlsx")).isNotEmptyFile();
    }
  }

  /** The library of copies refuses what the reader of cells never looks at. */
  @Nested
  class PartsThatAreNotAsTheirFormatAsks {

    private static final String REASON =
        ": a part of it is not as its format asks; saving it anew with Calc may mend that";

    private static final String DOCTYPE = "?><!DOCTYPE a [<!ENTITY b 'c'>]>";

    private void isSaidInASentenceAndTheCheckIsComplete(Path file) throws Exception {
      int status = checkWithCopies();

      assertThat(status).isLessThan(2);
      assertThat(err.toString().lines())
          .containsExactly(
              file
                  + ": its annotated copy cannot be written: the workbook cannot be annotated"
                  + REASON);
      assertThatThrownBy(() -> PlainCopy.write(file, folder.resolve("plain")))
          .isInstanceOf(UnreadableFileException.class)
          .hasMessage("the workbook cannot be copied" + REASON);
    }

    private Path with(String name, String old, String replacement) throws Exception {
      Path file = workbook("ada.xlsx");
      return HostileCopyTest.with(
          file, Map.of(name, part(file, name).replaceFirst(Pattern.quote(old), replacement)));
    }

    @Test
    void aDocumentType() throws Exception {
      isSaidInASentenceAndTheCheckIsComplete(with("xl/styles.xml", "?>", DOCTYPE));
    }

    @Test
    void aDocumentTypeOfAnOpenDocument() throws Exception {
      Path file =
          Files.copy(
              Path.of("src/test/resources/saved-by-calc/faulty-lab-table.ods"),
              Files.createDirectories(folder.resolve("in")).resolve("ben.ods"));
      isSaidInASentenceAndTheCheckIsComplete(
          HostileCopyTest.with(
              file,
              Map.of("content.xml", part(file, "content.xml").replaceFirst("\\?>", DOCTYPE))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"file:///etc/theme.xml", "http://127.0.0.1/a b", "::%%", ""})
    void aRelationshipThatLeadsNowhere(String target) throws Exception {
      isSaidInASentenceAndTheCheckIsComplete(
          with(
              "xl/_rels/workbook.xml.rels",
              "</Relationships>",
              "<Relationship Id=\"other\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/theme\""
                  + " Target=\""
                  + target
                  + "\"/></Relationships>"));
    }
  }
}
