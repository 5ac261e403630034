package tenthmark.checker.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;
import static tenthmark.checker.workbook.OdsFile.number;
import static tenthmark.checker.workbook.OdsFile.row;
import static tenthmark.checker.workbook.OdsFile.table;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.hssf.usermodel.HSSFChildAnchor;
import org.apache.poi.hssf.usermodel.HSSFClientAnchor;
import org.apache.poi.hssf.usermodel.HSSFPatriarch;
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFSimpleShape;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.Drawing;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFChildAnchor;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Comments and texts that lie on a sheet, in files as POI and Calc write them. */
class NotesTest {

  @TempDir Path folder;

  private static Map<String, String> comments(Sheet sheet) {
    return sheet.comments().entrySet().stream()
        .collect(Collectors.toMap(entry -> entry.getKey().place(), Map.Entry::getValue));
  }

  private static Map<String, String> boxes(Sheet sheet) {
    return sheet.boxes().stream()
        .collect(Collectors.toMap(box -> box.cell().place(), TextBox::text));
  }

  private Sheet saved(Workbook workbook) throws IOException, UnreadableFileException {
    Path file = folder.resolve("notes");
    try (workbook;
        OutputStream target = Files.newOutputStream(file)) {
      workbook.write(target);
    }
    return WorkbookFile.read(file).sheets().get(0);
  }

  private static void comment(Drawing<?> drawing, ClientAnchor anchor, Row row, String... lines) {
    Comment comment = drawing.createCellComment(anchor);
    comment.setAddress(row.getRowNum(), 1);
    comment.setAuthor(lines[0]);
    comment.setString(
        row.getSheet().getWorkbook().getCreationHelper().createRichTextString(lines[1]));
  }

  /** A spoke's length with a comment, a box, and a rectangle in a group beside a line. */
  private static XSSFWorkbook office() {
    XSSFWorkbook workbook = new XSSFWorkbook();
    Row row = workbook.createSheet("Spokes").createRow(3);
    row.createCell(1).setCellValue(262.5);
    XSSFDrawing drawing = (XSSFDrawing) row.getSheet().createDrawingPatriarch();
    comment(drawing, drawing.createAnchor(0, 0, 0, 0, 2, 3, 4, 6), row, "Ana", "Ana:\nFine marks.");
    drawing.createTextbox(new XSSFClientAnchor(0, 0, 0, 0, 4, 1, 7, 5)).setText("Both ends\nread.");
    var group = drawing.createGroup(new XSSFClientAnchor(0, 0, 0, 0, 4, 8, 7, 12));
    group.createConnector(new XSSFChildAnchor(0, 0, 10, 10));
    group.createSimpleShape(new XSSFChildAnchor(0, 0, 10, 10)).setText("Soft edges.");
    return workbook;
  }

  private static HSSFWorkbook binary() {
    HSSFWorkbook workbook = new HSSFWorkbook();
    Row row = workbook.createSheet("Spokes").createRow(3);
    row.createCell(1).setCellValue(262.5);
    HSSFPatriarch drawing = (HSSFPatriarch) row.getSheet().createDrawingPatriarch();
    comment(drawing, anchor(2, 3), row, "Ana", "Ana:\nFine marks.");
    drawing.createTextbox(anchor(4, 1)).setString(new HSSFRichTextString("Both ends\nread."));
    var group = drawing.createGroup(anchor(4, 8));
    group
        .createShape(new HSSFChildAnchor(0, 0, 9, 9))
        .setShapeType(HSSFSimpleShape.OBJECT_TYPE_LINE);
    group
        .createTextbox(new HSSFChildAnchor(0, 0, 9, 9))
        .setString(new HSSFRichTextString("Soft edges."));
    drawing.createSimpleShape(anchor(9, 9)).setShapeType(HSSFSimpleShape.OBJECT_TYPE_LINE);
    return workbook;
  }

  private static HSSFClientAnchor anchor(int column, int row) {
    return new HSSFClientAnchor(0, 0, 0, 0, (short) column, row, (short) (column + 3), row + 4);
  }

  private static void assertNoted(Sheet sheet, String comment) {
    assertThat(comments(sheet)).containsExactly(entry("B4", comment));
    assertThat(boxes(sheet))
        .containsOnly(entry("E2", "Both ends\nread."), entry("E9", "Soft edges."));
  }

  @Nested
  class FilesOfPoi {

    @Test
    void areReadAsXlsx() throws Exception {
      assertNoted(saved(office()), "Fine marks.");
    }

    @Test
    void areReadAsXls() throws Exception {
      assertNoted(saved(binary()), "Fine marks.");
    }
  }

  /** The first workbook, saved by Calc, which forgets who wrote the comment. */
  @ParameterizedTest
  @ValueSource(strings = {"notes.ods", "notes.xlsx", "notes.xls"})
  void filesSavedByCalcGiveTheSame(String name) throws Exception {
    assertNoted(
        WorkbookFile.read(WorkbookFileTest.saved(name)).sheets().get(0), "Ana:\nFine marks.");
  }

  @Test
  void commentsOfAnAnnotatedCopyAreNoneOfTheStudents() throws Exception {
    XSSFWorkbook workbook = new XSSFWorkbook();
    Row row = workbook.createSheet("Spokes").createRow(3);
    XSSFDrawing drawing = (XSSFDrawing) row.getSheet().createDrawingPatriarch();
    comment(
        drawing,
        drawing.createAnchor(0, 0, 0, 0, 2, 3, 4, 6),
        row,
        "Lost",
        Sheet.CHECKER + ": no unit");

    assertThat(saved(workbook).comments()).isEmpty();
  }

  @Nested
  class OpenDocument {

    private static final String CELL =
        "<table:table-cell office:value-type=\"float\" office:value=\"262.5\">";

    private Sheet read(String content) throws Exception {
      return WorkbookFile.read(OdsFile.write(folder.resolve("a.ods"), content)).sheets().get(0);
    }

    @Test
    void commentsAreTheParagraphsWithoutAuthorAndDate() throws Exception {
      Sheet sheet =
          read(
              table(
                  row(
                      CELL
                          + "<office:annotation><dc:creator>Ana</dc:creator>"
                          + "<dc:date>2026-11-02T10:00:00</dc:date>"
                          + "<meta:date-string>today</meta:date-string>"
                          + "<text:p>Fine<text:s/>marks,</text:p><text:p>sharp edges.</text:p>"
                          + "</office:annotation><text:p>262.5</text:p></table:table-cell>")));

      assertThat(comments(sheet)).containsExactly(entry("A1", "Fine marks,\nsharp edges."));
      assertThat(sheet.at(0, 0).orElseThrow().content()).isEqualTo(new Content.Number(262.5));
    }

    @Test
    void boxesInACellLieAtThatCell() throws Exception {
      Sheet sheet =
          read(
              table(
                  row(number(1))
                      + row(
                          number(2)
                              + CELL
                              + "<draw:frame><draw:text-box><text:p>Both ends.</text:p>"
                              + "</draw:text-box></draw:frame><text:p>262.5</text:p>"
                              + "</table:table-cell>")));

      assertThat(boxes(sheet)).containsExactly(entry("B2", "Both ends."));
    }

    @Test
    void boxesOnThePageLieAtTheCellUnderTheirCorner() throws Exception {
      String styles =
          "<style:style style:name=\"wide\"><style:table-column-properties"
              + " style:column-width=\"5cm\"/></style:style>"
              + "<style:style style:name=\"high\"><style:table-row-properties"
              + " style:row-height=\"1in\"/></style:style>";
      String shapes =
          "<table:shapes><draw:g><draw:custom-shape svg:x=\"110mm\" svg:y=\"3cm\">"
              + "<svg:desc>a rectangle</svg:desc><text:p>Soft edges.</text:p>"
              + "</draw:custom-shape></draw:g></table:shapes>";
      String columns =
          "<table:table-column table:style-name=\"wide\" table:number-columns-repeated=\"9\"/>";
      String rows =
          "<table:table-row table:style-name=\"high\" table:number-rows-repeated=\"4\">"
              + number(1)
              + "</table:table-row>";

      assertThat(boxes(read(styles + table(shapes + columns + rows))))
          .containsExactly(entry("C2", "Soft edges."));
    }
  }

  @Test
  void threadsComeInsteadOfTheCommentsThatStandInForThem() throws Exception {
    String relationships =
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Id=\"rId1\" Type=\"http://x/comments\" Target=\"../comments1.xml\"/>"
            + "<Relationship Id=\"rId2\" Type=\"http://x/threadedComment\""
            + " Target=\"../threads/t1.xml\"/></Relationships>";
    Path file =
        XlsxFile.cells("<c r=\"A1\"><v>262.5</v></c>")
            .part("xl/worksheets/_rels/sheet1.xml.rels", relationships)
            .part(
                "xl/comments1.xml",
                "<comments><authors><author>tc={1}</author></authors><commentList>"
                    + "<comment ref=\"A1\" authorId=\"0\"><text><t>[a thread]</t></text></comment>"
                    + "</commentList></comments>")
            .part(
                "xl/threads/t1.xml",
                "<ThreadedComments><threadedComment ref=\"A1\"><text>Fine marks.</text>"
                    + "</threadedComment><threadedComment ref=\"A1\"><text>Sharp edges.</text>"
                    + "</threadedComment></ThreadedComments>")
            .write(folder.resolve("a.xlsx"));

    assertThat(comments(WorkbookFile.read(file).sheets().get(0)))
        .containsExactly(entry("A1", "Fine marks.\nSharp edges."));
  }

  @Nested
  class Limited {

    private final Limits limits = Limits.DEFAULT.withCells(5);

    @Test
    void commentsCountAsCells() throws Exception {
      String comment = "<office:annotation><text:p>a</text:p></office:annotation>";
      String cell = "<table:table-cell>" + comment + "</table:table-cell>";
      Path file = OdsFile.write(folder.resolve("a.ods"), table(row(cell.repeat(6))));

      assertThatThrownBy(() -> WorkbookFile.read(file, limits))
          .hasMessage("the workbook holds more than 5 cells");
    }

    @Test
    void boxesCountAsCells() throws Exception {
      XSSFWorkbook workbook = office();
      XSSFDrawing drawing = workbook.getSheetAt(0).getDrawingPatriarch();
      for (int i = 0; i < 6; i++) {
        drawing.createTextbox(new XSSFClientAnchor(0, 0, 0, 0, i, 20, i + 1, 22)).setText("a");
      }
      Path file = folder.resolve("a.xlsx");
      try (workbook;
          OutputStream target = Files.newOutputStream(file)) {
        workbook.write(target);
      }

      assertThatThrownBy(() -> WorkbookFile.read(file, limits))
          .hasMessage("the workbook holds more than 5 cells");
    }
  }
}
