package tenthmark.checker.copy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.report.Contents;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** Students and numbers are invented. */
class AnnotatedCopyTest {

  private static final String SAVED = "src/test/resources/saved-by-calc/";
  private static final String SAMPLES = "../../sample-workbooks/workbooks/";

  @TempDir Path folder;

  /** A report with a finding at each of these cells. */
  private static FileReport report(Path file, CellAddress... cells) {
    List<Finding> findings =
        Arrays.stream(cells)
            .map(
                cell ->
                    RuleCatalogue.load()
                        .rules()
                        .get(0)
                        .declaration()
                        .finding(
                            cell,
                            Message.verbatim("=1+1 is <found>"),
                            Message.verbatim("& expected")))
            .toList();
    return FileReport.checked(file, Contents.NONE, findings);
  }

  private Path copy(FileReport report) throws Exception {
    return Files.write(
        folder.resolve("copy-" + report.name()),
        AnnotatedCopy.of(report, CheckerTexts.english(), Limits.DEFAULT));
  }

  @Nested
  class WhateverTheFormat {

    @ParameterizedTest
    @ValueSource(
        strings = {
          SAVED + "faulty-lab-table.ods",
          SAVED + "faulty-lab-table.xlsx",
          SAVED + "faulty-lab-table.xls",
          SAVED + "good.ods",
          SAVED + "native-formulas.ods",
          SAVED + "native-formulas.xlsx",
          SAVED + "native-formulas.xls",
          SAVED + "roundtripped-without-extension.xlsx",
          SAMPLES + "first-lab-table-faulty.ods",
          SAMPLES + "first-lab-table-faulty.xlsx",
          SAMPLES + "first-lab-table.ods"
        })
    void everyCellStaysAsItIsBesideAFindingsSheet(String name) throws Exception {
      Path file = Path.of(name);
      byte[] before = Files.readAllBytes(file);

      Workbook copy = WorkbookFile.read(copy(FileChecker.load().check(file)));
      Workbook original = WorkbookFile.read(file);

      List<String> names = new ArrayList<>(original.sheets().stream().map(s -> s.name()).toList());
      names.add(0, "Findings");
      assertThat(copy.sheets().stream().map(s -> s.name())).isEqualTo(names);
      for (var student : original.sheets()) {
        var copied = copy.sheet(student.name()).orElseThrow();
        assertThat(copied.hidden()).isEqualTo(student.hidden());
        assertThat(copied.cells().toList()).isEqualTo(student.cells().toList());
        assertThat(copied.merged()).containsExactlyInAnyOrderElementsOf(student.merged());
      }
      assertThat(copy.names()).containsExactlyInAnyOrderElementsOf(original.names());
      assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"faulty-lab-table.ods", "faulty-lab-table.xlsx"})
    void equalWorkbooksGiveEqualBytes(String name) throws Exception {
      FileReport report = FileChecker.load().check(Path.of(SAVED + name));
      byte[] first = AnnotatedCopy.of(report, CheckerTexts.english(), Limits.DEFAULT);
      Thread.sleep(2100);

      assertThat(AnnotatedCopy.of(report, CheckerTexts.english(), Limits.DEFAULT)).isEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"good.ods", "good.xlsx", "native-formulas.xls"})
    void theFindingsSheetListsEachFindingAsText(String name) throws Exception {
      String sheet = WorkbookFile.read(Path.of(SAVED + name)).sheets().get(0).name();

      Workbook copy =
          WorkbookFile.read(copy(report(Path.of(SAVED + name), new CellAddress(sheet, 1, 1))));

      assertThat(
              copy.sheet("Findings").orElseThrow().cells().map(cell -> cell.content().toString()))
          .contains(
              "Text[text=Findings in " + name + "]",
              "Text[text=B2]",
              "Text[text==1+1 is <found>]",
              "Text[text=& expected]");
    }

    @Test
    void theFindingsSheetSaysHowMuchWasReadAndWhatWasNot() {
      FileReport report =
          FileChecker.load()
              .check(
                  Grid.sheet("Bench")
                      .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
                      .row("Spoke", 262.5, "mm", 0.5, "Fine marks, two ends.")
                      .row()
                      .row(null, 7.5)
                      .xlsx(folder.resolve("ada.xlsx")));

      assertThat(Annotations.of(report, Optional.empty(), CheckerTexts.english()).preface())
          .contains(
              "1 record read, 1 number not read. What the numbers were taken for: 2 in records,"
                  + " 1 number not read.")
          .anyMatch(line -> line.startsWith("Not read on the sheet Bench: B4 ("));
    }

    @Test
    void aSheetNamedFindingsIsNoObstacle() {
      assertThat(
              Annotations.of(
                      report(folder.resolve("a.ods")), Optional.empty(), CheckerTexts.english())
                  .sheetName(List.of("Bench", "findings")))
          .isEqualTo("Findings 2");
    }
  }

  @Nested
  class OfficeWorkbooks {

    private Path write(org.apache.poi.ss.usermodel.Workbook workbook, String name)
        throws IOException {
      Path file = folder.resolve(name);
      try (workbook;
          OutputStream target = Files.newOutputStream(file)) {
        workbook.write(target);
      }
      return file;
    }

    private static void comment(Sheet sheet, int row, int column, String text) {
      var helper = sheet.getWorkbook().getCreationHelper();
      ClientAnchor anchor = helper.createClientAnchor();
      anchor.setRow1(row);
      anchor.setCol1(column);
      anchor.setRow2(row + 3);
      anchor.setCol2(column + 3);
      Comment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
      comment.setAddress(row, column);
      comment.setAuthor("Ada");
      comment.setString(helper.createRichTextString(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"xlsx", "xls"})
    void keepTheStudentsComments(String format) throws Exception {
      var workbook = format.equals("xls") ? new HSSFWorkbook() : new XSSFWorkbook();
      Sheet bench = workbook.createSheet("Bench");
      bench.createRow(0).createCell(0).setCellValue(172.5);
      comment(bench, 0, 0, "read twice");
      comment(bench, 4, 2, "and here");
      Path file = write(workbook, "ada." + format);

      Path copy =
          copy(
              report(
                  file,
                  new CellAddress("Bench", 0, 0),
                  new CellAddress("Bench", 1, 4),
                  new CellAddress("Bench", 6, 9)));

      try (var annotated = WorkbookFactory.create(copy.toFile(), null, true)) {
        Sheet sheet = annotated.getSheet("Bench");
        assertThat(sheet.getCellComments()).hasSize(4);
        assertThat(sheet.getRow(0).getCell(0).getCellComment().getString().getString())
            .isEqualTo("read twice");
        assertThat(annotated.getSheet("Findings"))
            .anyMatch(row -> row.getCell(3) != null && row.getCell(1).toString().equals("A1"));
        assertThat(sheet.getRow(0).getCell(0).getCellComment().getAuthor()).isEqualTo("Ada");
        assertThat(
                sheet
                    .getCellComment(new org.apache.poi.ss.util.CellAddress(4, 2))
                    .getString()
                    .getString())
            .isEqualTo("and here");
        assertThat(sheet.getCellComments())
            .containsKey(new org.apache.poi.ss.util.CellAddress(9, 6));
      }
    }

    @Test
    void keepTheirStyles() throws Exception {
      Path file = Path.of(SAMPLES + "first-lab-table-faulty.xlsx");

      Path copy = copy(FileChecker.load().check(file));

      try (XSSFWorkbook original = new XSSFWorkbook(Files.newInputStream(file));
          XSSFWorkbook annotated = new XSSFWorkbook(Files.newInputStream(copy))) {
        for (Sheet sheet : original) {
          for (Row row : sheet) {
            for (var cell : row) {
              XSSFCell copied =
                  annotated
                      .getSheet(sheet.getSheetName())
                      .getRow(row.getRowNum())
                      .getCell(cell.getColumnIndex());
              assertThat(copied.getCellStyle().getCoreXf().xmlText())
                  .isEqualTo(((XSSFCell) cell).getCellStyle().getCoreXf().xmlText());
            }
          }
        }
      }
    }

    @Test
    void keepNamesMacrosAndCharts() throws Exception {
      XSSFWorkbook workbook = new XSSFWorkbook();
      var bench = workbook.createSheet("Bench");
      bench.createRow(0).createCell(0).setCellValue(172.5);
      var name = workbook.createName();
      name.setNameName("only_here");
      name.setSheetIndex(0);
      name.setRefersToFormula("Bench!$A$1");
      workbook.setVBAProject(
          new ByteArrayInputStream("not really macros".getBytes(StandardCharsets.UTF_8)));
      var drawing = bench.createDrawingPatriarch();
      drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 3, 3, 9, 20)).setTitleText("Stretch");
      Path file = write(workbook, "ada.xlsm");

      Path copy = copy(report(file, new CellAddress("Bench", 0, 0)));

      assertThat(part(copy, "xl/vbaProject.bin")).isEqualTo("not really macros");
      assertThat(part(copy, "xl/charts/chart1.xml")).isEqualTo(part(file, "xl/charts/chart1.xml"));
      try (XSSFWorkbook annotated = new XSSFWorkbook(Files.newInputStream(copy))) {
        assertThat(annotated.isMacroEnabled()).isTrue();
        assertThat(annotated.getName("only_here").getSheetName()).isEqualTo("Bench");
        assertThat(annotated.getName("only_here").getSheetIndex()).isEqualTo(1);
      }
    }
  }

  /**
   * A workbook with a thread of comments, a check box, a picture, a chart, sparklines, a drop-down
   * list and printer settings, written by hand after ECMA-376 and the extensions that Excel writes.
   */
  @Nested
  class FurnishedWorkbooks {

    private static final Path PARTS = Path.of("src/test/resources/furnished-workbook");

    /** Counts, the used area and which sheet is shown follow from what is added. */
    private static final Set<String> FOLLOWING = Set.of("count", "ref", "tabSelected", "activeTab");

    private Path file() throws IOException {
      Path file = folder.resolve("ada.xlsx");
      try (Stream<Path> parts = Files.walk(PARTS);
          ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
        for (Path part : parts.filter(Files::isRegularFile).sorted().toList()) {
          zip.putNextEntry(new ZipEntry(PARTS.relativize(part).toString()));
          zip.write(Files.readAllBytes(part));
          zip.closeEntry();
        }
      }
      return file;
    }

    @Test
    void keepAllThatIsInEachPart() throws Exception {
      Path file = file();

      Path copy =
          copy(report(file, new CellAddress("Bench", 1, 1), new CellAddress("Bench", 2, 1)));

      try (ZipFile one = new ZipFile(file.toFile());
          ZipFile other = new ZipFile(copy.toFile())) {
        for (ZipEntry entry : Collections.list(one.entries())) {
          byte[] before = one.getInputStream(entry).readAllBytes();
          byte[] after = other.getInputStream(other.getEntry(entry.getName())).readAllBytes();
          if (!entry.getName().startsWith("[Content") && !Arrays.equals(before, after)) {
            assertThat(keeps(root(before), root(after))).as(entry.getName()).isTrue();
          }
        }
        for (String untouched :
            List.of(
                "threadedComments/threadedComment1.xml",
                "persons/person.xml",
                "ctrlProps/ctrlProp1.xml",
                "media/image1.png",
                "printerSettings/printerSettings1.bin")) {
          assertThat(part(copy, "xl/" + untouched)).isEqualTo(part(file, "xl/" + untouched));
        }
      }
      assertThat(part(copy, "xl/comments1.xml")).contains("ref=\"C2\"").contains("=1+1 is");
    }

    private static org.w3c.dom.Element root(byte[] part) throws Exception {
      return DocumentBuilderFactory.newDefaultNSInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(part))
          .getDocumentElement();
    }

    /** Whether an element has the attributes, the text and, in order, the children of another. */
    private static boolean keeps(org.w3c.dom.Element one, org.w3c.dom.Element other) {
      if (!Objects.equals(one.getNamespaceURI(), other.getNamespaceURI())
          || !one.getLocalName().equals(other.getLocalName())) {
        return false;
      }
      var attributes = one.getAttributes();
      for (int i = 0; i < attributes.getLength(); i++) {
        var own = attributes.item(i);
        if (!FOLLOWING.contains(own.getNodeName())
            && !own.getNodeName().startsWith("xmlns")
            && !uniform(own.getNodeValue())
                .equals(uniform(other.getAttribute(own.getNodeName())))) {
          return false;
        }
      }
      List<org.w3c.dom.Element> rest = new ArrayList<>(children(other));
      for (org.w3c.dom.Element child : children(one)) {
        while (!rest.isEmpty() && !keeps(child, rest.get(0))) {
          rest.remove(0);
        }
        if (rest.isEmpty()) {
          return false;
        }
        rest.remove(0);
      }
      return !children(one).isEmpty() || one.getTextContent().equals(other.getTextContent());
    }

    /** Two ways of writing the same (W3C XML Schema, part 2, 3.2.2 and 3.2.5). */
    private static String uniform(String value) {
      return value.equals("true")
          ? "1"
          : value.equals("false") ? "0" : value.replaceFirst("[.]0$", "");
    }

    private static List<org.w3c.dom.Element> children(org.w3c.dom.Element element) {
      List<org.w3c.dom.Element> children = new ArrayList<>();
      for (var node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
        if (node instanceof org.w3c.dom.Element child) {
          children.add(child);
        }
      }
      return children;
    }
  }

  @Nested
  class OpenDocuments {

    private static final String CELL =
        "<table:table-cell office:value-type=\"float\" office:value=\"7\"/>";

    private Path ods(String rows) throws IOException {
      Path file = folder.resolve("ada.ods");
      try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
        put(zip, "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
        put(zip, "Pictures/spoke.png", "not really a picture");
        put(
            zip,
            "content.xml",
            "<office:document-content"
                + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
                + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\""
                + "><office:body><office:spreadsheet><table:table table:name=\"Bench\">"
                + rows
                + "</table:table></office:spreadsheet></office:body></office:document-content>");
      }
      return file;
    }

    private static void put(ZipOutputStream zip, String name, String text) throws IOException {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(text.getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }

    private static Elements rows(Path copy) throws IOException {
      Document content = Jsoup.parse(part(copy, "content.xml"), "", Parser.xmlParser());
      return content.select("table|table[table:name=Bench] table|table-row");
    }

    private static List<String> repeats(Elements elements, String attribute) {
      return elements.stream().map(element -> element.attr(attribute)).toList();
    }

    private static Elements cells(Element row) {
      return row.select("> table|table-cell, > table|covered-table-cell");
    }

    private void assertEqualCells(Path file, Path copy) throws Exception {
      assertThat(WorkbookFile.read(copy).sheet("Bench").orElseThrow().cells().toList())
          .isEqualTo(WorkbookFile.read(file).sheet("Bench").orElseThrow().cells().toList());
    }

    @Test
    void splitRepeatedRowsAndCellsAroundAComment() throws Exception {
      Path file =
          ods(
              "<table:table-row table:number-rows-repeated=\"5\"><table:table-cell"
                  + " table:number-columns-repeated=\"4\" office:value-type=\"float\""
                  + " office:value=\"7\"/></table:table-row>");

      Path copy = copy(report(file, new CellAddress("Bench", 1, 2)));

      Elements rows = rows(copy);
      assertThat(repeats(rows, "table:number-rows-repeated")).containsExactly("2", "", "2");
      assertThat(repeats(cells(rows.get(1)), "table:number-columns-repeated"))
          .containsExactly("", "", "2");
      assertThat(cells(rows.get(1)).get(1).select("office|annotation text|p").eachText())
          .contains("Found: =1+1 is <found>");
      assertThat(rows.select("office|annotation")).hasSize(1);
      assertEqualCells(file, copy);
    }

    @Test
    void countCoveredCellsAndKeepArrayFormulas() throws Exception {
      Path file =
          ods(
              "<table:table-row><table:table-cell table:number-columns-spanned=\"2\""
                  + " table:number-rows-spanned=\"1\" office:value-type=\"float\""
                  + " office:value=\"1\"/><table:covered-table-cell/>"
                  + "<table:table-cell table:formula=\"of:=[.A1:.B1]*2\""
                  + " table:number-matrix-columns-spanned=\"2\""
                  + " table:number-matrix-rows-spanned=\"1\" office:value-type=\"float\""
                  + " office:value=\"2\"/>"
                  + CELL
                  + "</table:table-row>");

      Path copy =
          copy(report(file, new CellAddress("Bench", 2, 0), new CellAddress("Bench", 3, 0)));

      Elements cells = cells(rows(copy).get(0));
      assertThat(cells).hasSize(4);
      assertThat(cells.get(2).select("office|annotation")).hasSize(1);
      assertThat(cells.get(3).select("office|annotation")).hasSize(1);
      assertThat(cells.get(2).attr("table:number-matrix-columns-spanned")).isEqualTo("2");
      assertEqualCells(file, copy);
    }

    @Test
    void growToACellBeyondTheirLastRowAndColumn() throws Exception {
      Path file =
          ods(
              "<table:table-header-rows><table:table-row>"
                  + CELL
                  + "</table:table-row></table:table-header-rows><table:named-expressions/>");

      Path copy =
          copy(report(file, new CellAddress("Bench", 3, 0), new CellAddress("Bench", 2, 4)));

      Elements rows = rows(copy);
      assertThat(repeats(rows, "table:number-rows-repeated")).containsExactly("", "3", "");
      assertThat(cells(rows.get(0)).get(2).select("office|annotation")).hasSize(1);
      assertThat(cells(rows.get(2)).get(1).select("office|annotation")).hasSize(1);
      assertThat(rows.last().nextElementSibling().tagName()).isEqualTo("table:named-expressions");
      assertEqualCells(file, copy);
    }

    @Test
    void keepTheStudentsComments() throws Exception {
      Path file =
          ods(
              "<table:table-row><table:table-cell office:value-type=\"float\" office:value=\"7\">"
                  + "<office:annotation><text:p>read twice</text:p></office:annotation>"
                  + "<text:p>7</text:p></table:table-cell></table:table-row>");

      Path copy = copy(report(file, new CellAddress("Bench", 0, 0)));

      Elements comment = rows(copy).select("office|annotation");
      assertThat(comment).hasSize(1);
      assertThat(comment.select("text|p").eachText()).containsExactly("read twice");
      assertEqualCells(file, copy);
    }

    @Test
    void keepEveryOtherPartByteForByteInItsOrder() throws Exception {
      Path file = Path.of(SAMPLES + "first-lab-table-faulty.ods");

      Path copy = copy(FileChecker.load().check(file));

      try (ZipFile one = new ZipFile(file.toFile());
          ZipFile other = new ZipFile(copy.toFile())) {
        List<? extends ZipEntry> entries = one.stream().toList();
        assertThat(other.stream().map(ZipEntry::getName))
            .isEqualTo(entries.stream().map(ZipEntry::getName).toList());
        assertThat(other.stream().findFirst().orElseThrow().getMethod()).isEqualTo(ZipEntry.STORED);
        for (ZipEntry entry : entries) {
          if (!entry.getName().equals("content.xml")) {
            assertThat(other.getInputStream(other.getEntry(entry.getName())).readAllBytes())
                .isEqualTo(one.getInputStream(entry).readAllBytes());
          }
        }
      }
    }

    @Test
    void keepLineEndsAndBlanksWithinFormulas() throws Exception {
      Path file =
          ods(
              "<table:table-row><table:table-cell table:formula=\"of:=1 +&#10;&#9;&quot;a "
                  + " b&quot;\" office:value-type=\"string\" office:string-value=\"x&#10;y\"/>"
                  + "</table:table-row>");

      Path copy = copy(report(file, new CellAddress("Bench", 0, 0)));

      assertEqualCells(file, copy);
    }
  }

  private static String part(Path file, String name) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      return new String(
          zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
