package tenthmark.checker.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tenthmark.checker.workbook.OdsFile.number;
import static tenthmark.checker.workbook.OdsFile.row;
import static tenthmark.checker.workbook.OdsFile.table;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.NamedFormula;
import tenthmark.measurement.formula.SheetSize;

class WorkbookFileTest {

  @TempDir Path folder;

  static Path saved(String name) {
    return Path.of("src/test/resources/saved-by-calc", name);
  }

  private static Content at(Workbook workbook, String sheet, int column, int row) {
    return workbook.at(new CellAddress(sheet, column, row)).orElseThrow().content();
  }

  @Nested
  class FilesSavedByCalc {

    @ParameterizedTest
    @ValueSource(strings = {"good.ods", "good.xlsx"})
    void giveTheSameModel(String name) throws Exception {
      Workbook workbook = WorkbookFile.read(saved(name));

      assertThat(at(workbook, "Sheet1", 0, 0)).isEqualTo(new Content.Text("quantity"));
      assertThat(at(workbook, "Sheet1", 2, 1)).isEqualTo(new Content.Number(172.5));
      assertThat(at(workbook, "Sheet1", 4, 1))
          .isInstanceOfSatisfying(
              Content.Formula.class,
              formula -> {
                assertThat(formula.text()).isEqualTo("LAB_READING(F2,\"fine\",2)");
                assertThat(formula.stored()).contains(new Content.Number(0.5));
                assertThat(formula.array()).isEmpty();
              });
    }

    @ParameterizedTest
    @ValueSource(strings = {"good.ods", "good.xlsx"})
    void spreadAnArrayFormulaOverItsCells(String name) throws Exception {
      Workbook workbook = WorkbookFile.read(saved(name));
      CellRange array = new CellRange("Sheet1", 7, 1, 7, 2);

      for (int row = 1; row <= 2; row++) {
        assertThat(at(workbook, "Sheet1", 7, row))
            .isInstanceOfSatisfying(
                Content.Formula.class,
                formula -> {
                  assertThat(formula.text()).isEqualTo("LAB_READING(F2:F3)");
                  assertThat(formula.array()).contains(array);
                });
      }
    }

    @ParameterizedTest
    @ValueSource(strings = {"native-formulas.ods", "native-formulas.xlsx", "native-formulas.xls"})
    void keepStoredValuesOfEveryKind(String name) throws Exception {
      Workbook workbook = WorkbookFile.read(saved(name));

      assertThat(stored(workbook, 2, 0)).contains(new Content.Number(7));
      assertThat(stored(workbook, 4, 0)).contains(new Content.Error("#DIV/0!"));
      assertThat(stored(workbook, 5, 0)).contains(new Content.Text("a;\"b2"));
      assertThat(stored(workbook, 1, 2)).contains(new Content.Logical(true));
      // TODAY() was stored on 25 November 2026, day 46351 counted from 30 December 1899
      assertThat(stored(workbook, 2, 2)).contains(new Content.Number(46351));
    }

    private static Optional<Content> stored(Workbook workbook, int column, int row) {
      return ((Content.Formula) at(workbook, "My sheet", column, row)).stored();
    }
  }

  @Nested
  class OpenDocumentContent {

    @Test
    void repeatsRowsAndColumns() throws Exception {
      Path file =
          OdsFile.write(
              folder.resolve("a.ods"),
              table(
                  "<table:table-row table:number-rows-repeated=\"3\">"
                      + "<table:table-cell table:number-columns-repeated=\"2\"/>"
                      + "<table:table-cell table:number-columns-repeated=\"2\""
                      + " office:value-type=\"float\" office:value=\"7\"/></table:table-row>"
                      + "<table:table-row table:number-rows-repeated=\"1048000\"><table:table-cell"
                      + " table:number-columns-repeated=\"16384\"/></table:table-row>"
                      + row(number(1))));

      Sheet sheet = WorkbookFile.read(file).sheets().get(0);

      assertThat(sheet.cells().map(cell -> cell.address().place()))
          .containsExactly("C1", "D1", "C2", "D2", "C3", "D3", "A1048004");
    }

    @Test
    void joinsParagraphsAndKeepsBlanks() throws Exception {
      Path file =
          OdsFile.write(
              folder.resolve("a.ods"),
              table(
                  row(
                      "<table:table-cell office:value-type=\"string\"><office:annotation>"
                          + "<text:p>a comment</text:p></office:annotation>"
                          + "<text:p>soft<text:s text:c=\"2\"/><text:span>edges</text:span></text:p>"
                          + "<text:p>both ends</text:p></table:table-cell>")));

      assertThat(at(WorkbookFile.read(file), "Sheet1", 0, 0))
          .isEqualTo(new Content.Text("soft  edges\nboth ends"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16BE", "UTF-16LE"})
    void mayBeginWithAByteOrderMark(String charset) throws Exception {
      Path plain = OdsFile.write(folder.resolve("a.ods"), table(row(number(7))));
      Path marked = OdsFile.encoded(plain, folder.resolve("b.ods"), Charset.forName(charset));

      assertThat(at(WorkbookFile.read(marked), "Sheet1", 0, 0)).isEqualTo(new Content.Number(7));
    }

    @Test
    void leavesDeletedAndDrawnTablesOut() throws Exception {
      String inner = table(row(number(9)));
      Path file =
          OdsFile.write(
              folder.resolve("a.ods"),
              "<table:tracked-changes>"
                  + inner
                  + "</table:tracked-changes>"
                  + table("<table:shapes>" + inner + "</table:shapes>" + row(number(1))));

      Workbook workbook = WorkbookFile.read(file);

      assertThat(workbook.sheets()).hasSize(1);
      assertThat(workbook.sheets().get(0).cells()).hasSize(1);
    }

    @Test
    void readsNamesMergesAndTimes() throws Exception {
      Path file =
          OdsFile.write(
              folder.resolve("a.ods"),
              table(
                      row(
                          "<table:table-cell table:number-columns-spanned=\"3\""
                              + " office:value-type=\"time\""
                              + " office:time-value=\"PT06H00M00S\"/>"))
                  + "<table:named-expressions><table:named-range table:name=\"Arm\""
                  + " table:base-cell-address=\"$Sheet1.$A$1\""
                  + " table:cell-range-address=\"$Sheet1.$A$1:.$B$4\"/></table:named-expressions>");

      Workbook workbook = WorkbookFile.read(file);

      assertThat(workbook.names())
          .containsExactly(
              new DefinedName(
                  "Arm",
                  Optional.empty(),
                  new NamedFormula(
                      "Sheet1!$A$1:$B$4", new CellAddress("Sheet1", 0, 0), SheetSize.LARGE)));
      assertThat(workbook.sheets().get(0).merged())
          .containsExactly(new CellRange("Sheet1", 0, 0, 2, 0));
      assertThat(at(workbook, "Sheet1", 0, 0)).isEqualTo(new Content.Number(0.25));
    }
  }

  @Nested
  class ContentDecides {

    @Test
    void andNotTheNameOfTheFile() throws Exception {
      Path disguised = Files.copy(saved("good.xlsx"), folder.resolve("table.ods"));
      Path other = Files.copy(saved("good.ods"), folder.resolve("table.xlsx"));

      assertThat(at(WorkbookFile.read(disguised), "Sheet1", 2, 1))
          .isEqualTo(at(WorkbookFile.read(other), "Sheet1", 2, 1));
    }
  }

  @Nested
  class RefusesInOneLine {

    private void refused(Path file, String line) {
      assertThatThrownBy(() -> WorkbookFile.read(file))
          .isInstanceOf(UnreadableFileException.class)
          .hasMessage(line);
    }

    @Test
    void aMissingFile() {
      refused(folder.resolve("none.ods"), "no such file or folder");
    }

    @Test
    void anEmptyFile() throws Exception {
      refused(Files.createFile(folder.resolve("a.ods")), "the file is empty (0 bytes)");
    }

    @Test
    void aTextFileWithTheNameOfAWorkbook() throws Exception {
      refused(
          Files.writeString(folder.resolve("a.xlsx"), "quantity,value\ncrank arm,172.5\n"),
          "not a workbook: its content is neither .xlsx, .xlsm, .xls nor .ods");
    }

    @Test
    void anotherZipArchive() throws Exception {
      refused(
          OdsFile.zip(folder.resolve("a.ods"), "notes.txt", "hello"),
          "not a workbook: a zip archive with other content");
    }

    @Test
    void aTextDocument() throws Exception {
      refused(
          OdsFile.zip(
              folder.resolve("a.ods"), "mimetype", "application/vnd.oasis.opendocument.text"),
          "not a workbook: an OpenDocument file of another kind");
      Path word = folder.resolve("a.xlsx");
      try (XWPFDocument document = new XWPFDocument();
          OutputStream target = Files.newOutputStream(word)) {
        document.write(target);
      }
      refused(word, "not a workbook: an Office file of another kind");
    }

    @ParameterizedTest
    @ValueSource(strings = {"good.ods", "good.xlsx", "native-formulas.xls"})
    void aFileThatIsCutShort(String name) throws Exception {
      byte[] whole = Files.readAllBytes(saved(name));
      for (int tenths = 1; tenths < 10; tenths++) {
        Path cut = folder.resolve(tenths + name);
        Files.write(cut, Arrays.copyOf(whole, whole.length * tenths / 10));
        refused(cut, "the file is damaged or cut short");
      }
    }

    @Test
    void aLockedXlsx() throws Exception {
      Path file = folder.resolve("a.xlsx");
      EncryptionInfo lock = new EncryptionInfo(EncryptionMode.agile);
      lock.getEncryptor().confirmPassword("spoke");
      try (POIFSFileSystem container = new POIFSFileSystem();
          XSSFWorkbook workbook = new XSSFWorkbook()) {
        workbook.createSheet();
        try (OutputStream inside = lock.getEncryptor().getDataStream(container)) {
          workbook.write(inside);
        }
        try (OutputStream target = Files.newOutputStream(file)) {
          container.writeFilesystem(target);
        }
      }
      refused(file, "the workbook is protected by a password and cannot be read");
    }

    @Test
    void aLockedXls() throws Exception {
      Path file = folder.resolve("a.xls");
      Biff8EncryptionKey.setCurrentUserPassword("spoke");
      try (HSSFWorkbook workbook = new HSSFWorkbook();
          OutputStream target = Files.newOutputStream(file)) {
        workbook.createSheet();
        workbook.write(target);
      } finally {
        Biff8EncryptionKey.setCurrentUserPassword(null);
      }
      refused(file, "the workbook is protected by a password and cannot be read");
    }

    @Test
    void aLockedOds() throws Exception {
      refused(
          OdsFile.zip(
              folder.resolve("a.ods"),
              "mimetype",
              OdsFile.MIME_TYPE,
              "META-INF/manifest.xml",
              "<manifest><encryption-data/></manifest>",
              "content.xml",
              "garbage"),
          "the workbook is protected by a password and cannot be read");
    }
  }

  @Nested
  class StaysWithinLimits {

    private void refused(Path file, String line) {
      assertThatThrownBy(
              () ->
                  WorkbookFile.read(
                      file, Limits.DEFAULT.withInflatedBytes(100_000).withCells(1000)))
          .isInstanceOf(UnreadableFileException.class)
          .hasMessage(line);
    }

    @ParameterizedTest
    @ValueSource(ints = {1001, 1 << 20, Integer.MAX_VALUE})
    void whereAFullRowIsRepeated(int times) throws Exception {
      refused(
          OdsFile.write(
              folder.resolve("a.ods"),
              table(
                  "<table:table-row table:number-rows-repeated=\""
                      + times
                      + "\">"
                      + number(1)
                      + "</table:table-row>")),
          "the workbook holds more than 1000 cells");
    }

    @Test
    void whereAFullColumnIsRepeated() throws Exception {
      refused(
          OdsFile.write(
              folder.resolve("a.ods"),
              table(
                  row(
                      "<table:table-cell table:number-columns-repeated=\"2147483647\""
                          + " office:value-type=\"float\" office:value=\"1\"/>"))),
          "the workbook holds more than 1000 cells");
    }

    @Test
    void whereAnArrayFormulaFillsTheSheet() throws Exception {
      refused(
          OdsFile.write(
              folder.resolve("a.ods"),
              table(
                  row(
                      "<table:table-cell table:formula=\"of:=1\""
                          + " table:number-matrix-columns-spanned=\"16384\""
                          + " table:number-matrix-rows-spanned=\"1048576\"/>"))),
          "the workbook holds more than 1000 cells");
    }

    @Test
    void whereRowsAreCountedPastAllNumbers() throws Exception {
      String rows = "<table:table-row table:number-rows-repeated=\"2147483647\"/>";
      refused(
          OdsFile.write(folder.resolve("a.ods"), table(rows + rows)),
          "the file is damaged or cut short");
    }

    @Test
    void whereAPartUnpacksToTooMuch() throws Exception {
      String blanks = " ".repeat(200_000);
      String line = "the workbook unpacks to more data than is allowed";
      refused(OdsFile.write(folder.resolve("a.ods"), table(blanks)), line);
      refused(
          OdsFile.zip(
              folder.resolve("a.xlsx"),
              "[Content_Types].xml",
              "<Types>application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"
                  + "</Types>",
              "xl/worksheets/sheet1.xml",
              "<worksheet>" + blanks + "</worksheet>"),
          line);
    }

    @Test
    void andOpensNoEntities() throws Exception {
      Path secret = Files.writeString(folder.resolve("secret.txt"), "42");
      Path file =
          OdsFile.write(
              folder.resolve("a.ods"),
              "<!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>",
              table(
                  row(
                      "<table:table-cell office:value-type=\"string\"><text:p>&e;</text:p>"
                          + "</table:table-cell>")));

      assertThatThrownBy(() -> WorkbookFile.read(file))
          .isInstanceOf(UnreadableFileException.class)
          .hasMessage("the file is damaged or cut short");
    }
  }

  @Test
  void neverChangesTheFile() throws IOException, UnreadableFileException {
    for (String name : new String[] {"good.ods", "good.xlsx", "native-formulas.xls"}) {
      Path copy = Files.copy(saved(name), folder.resolve(name));
      WorkbookFile.read(copy);
      assertThat(copy).hasSameBinaryContentAs(saved(name));
      assertThat(folder).isDirectoryNotContaining(other -> !other.equals(copy));
      Files.delete(copy);
    }
  }
}
