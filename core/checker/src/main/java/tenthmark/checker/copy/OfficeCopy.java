package tenthmark.checker.copy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.RichTextString;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.checker.workbook.XlsxDocument;

/** Annotates .xlsx, .xlsm and .xls files through POI. */
final class OfficeCopy {

  /** In characters, by column of the findings sheet. */
  private static final int[] WIDTHS = {16, 8, 10, 45, 45, 45, 45};

  /** Of the 1024 parts of a column by which an .xls file places a drawing. */
  private static final int LAST_PART_OF_COLUMN = 1023;

  private static final int COMMENT_COLUMNS = 5;
  private static final int COMMENT_ROWS = 8;

  /** The same in every copy, so that equal workbooks give equal bytes. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final Workbook workbook;
  private final CreationHelper helper;

  private OfficeCopy(Workbook workbook) {
    this.workbook = workbook;
    this.helper = workbook.getCreationHelper();
  }

  static byte[] xls(Path original, Annotations annotations) throws IOException {
    try (FileChannel channel = FileChannel.open(original);
        POIFSFileSystem container = new POIFSFileSystem(channel, true);
        HSSFWorkbook workbook = new HSSFWorkbook(container)) {
      new OfficeCopy(workbook).annotate(annotations);
      XlsSheets.putLastInFront(workbook);
      ByteArrayOutputStream copy = new ByteArrayOutputStream();
      workbook.write(copy);
      return copy.toByteArray();
    }
  }

  /** The document properties stay the student's: POI would name itself and the time of day. */
  static byte[] xlsx(Path original, Annotations annotations) throws IOException {
    ByteArrayOutputStream copy = new ByteArrayOutputStream();
    try (ZipFile source = ZipFile.builder().setPath(original).get();
        ZipInputStream parts =
            new ZipInputStream(new ByteArrayInputStream(annotated(original, annotations)));
        ZipOutputStream target = new ZipOutputStream(copy)) {
      for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
        ZipArchiveEntry own = source.getEntry(part.getName());
        byte[] content = parts.readAllBytes();
        if (own != null && part.getName().startsWith("docProps/")) {
          try (InputStream stream = source.getInputStream(own)) {
            content = stream.readAllBytes();
          }
        }
        ZipEntry entry = new ZipEntry(part.getName());
        entry.setTimeLocal(TIME);
        target.putNextEntry(entry);
        target.write(content);
        target.closeEntry();
      }
    }
    return copy.toByteArray();
  }

  private static byte[] annotated(Path original, Annotations annotations) throws IOException {
    ByteArrayOutputStream copy = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = XlsxDocument.open(original)) {
      Sheet findings = new OfficeCopy(workbook).annotate(annotations);
      workbook.setSheetOrder(findings.getSheetName(), 0);
      workbook.write(copy);
    }
    return copy.toByteArray();
  }

  /** The findings sheet, which is the last one and the one that is shown. */
  private Sheet annotate(Annotations annotations) {
    annotations
        .comments()
        .forEach(
            (cell, text) ->
                comment(
                    workbook.getSheet(cell.sheet()),
                    new CellAddress(cell.row(), cell.column()),
                    text));
    Sheet findings = findings(annotations);
    int place = workbook.getSheetIndex(findings);
    workbook.setActiveSheet(place);
    workbook.setSelectedTab(place);
    workbook.setFirstVisibleTab(0);
    return findings;
  }

  /** A comment of the student's stays alone on its cell: it may be one of a thread. */
  private void comment(Sheet sheet, CellAddress cell, String text) {
    if (sheet.getCellComment(cell) == null) {
      ClientAnchor anchor = helper.createClientAnchor();
      anchor.setCol1(cell.getColumn());
      anchor.setDx1(rightEdge(sheet, cell.getColumn()));
      anchor.setCol2(cell.getColumn() + 1 + COMMENT_COLUMNS);
      anchor.setRow1(cell.getRow());
      anchor.setRow2(cell.getRow() + COMMENT_ROWS);
      Comment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
      comment.setAddress(cell);
      comment.setAuthor(Annotations.AUTHOR);
      comment.setString(helper.createRichTextString(text));
    }
  }

  /**
   * How far the right edge of a column is from its left one, in the unit of the format. The comment
   * begins there and not in the next column: POI puts it on the cell under its corner first, and
   * refuses that if there is a comment.
   */
  private static int rightEdge(Sheet sheet, int column) {
    return sheet instanceof HSSFSheet
        ? LAST_PART_OF_COLUMN
        : Units.columnWidthToEMU(sheet.getColumnWidth(column));
  }

  private Sheet findings(Annotations annotations) {
    List<String> names =
        IntStream.range(0, workbook.getNumberOfSheets()).mapToObj(workbook::getSheetName).toList();
    Sheet sheet = workbook.createSheet(annotations.sheetName(names));
    CellStyle plain = style(false);
    CellStyle bold = style(true);
    int next = 0;
    for (String line : annotations.preface()) {
      Cell cell = sheet.createRow(next).createCell(0);
      cell.setCellValue(line);
      if (next++ == 0) {
        cell.setCellStyle(bold);
      }
    }
    if (!annotations.rows().isEmpty()) {
      row(sheet, ++next, annotations.headings(), bold);
    }
    for (List<String> row : annotations.rows()) {
      row(sheet, ++next, row, plain);
    }
    for (int column = 0; column < WIDTHS.length; column++) {
      sheet.setColumnWidth(column, WIDTHS[column] * 256);
    }
    return sheet;
  }

  private CellStyle style(boolean bold) {
    CellStyle style = workbook.createCellStyle();
    style.setWrapText(!bold);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    if (bold) {
      Font font = workbook.createFont();
      font.setBold(true);
      style.setFont(font);
    }
    return style;
  }

  private void row(Sheet sheet, int number, List<String> texts, CellStyle style) {
    Row row = sheet.createRow(number);
    for (int column = 0; column < texts.size(); column++) {
      RichTextString text = helper.createRichTextString(texts.get(column));
      Cell cell = row.createCell(column);
      cell.setCellValue(text);
      cell.setCellStyle(style);
    }
  }
}
