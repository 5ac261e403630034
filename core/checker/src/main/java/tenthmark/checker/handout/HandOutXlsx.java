package tenthmark.checker.handout;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.checker.reading.InsideProfile;
import tenthmark.checker.workbook.XlsxDocument;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorkbookConvention;

/** Makes what is handed out of an .xlsx or .xlsm file. */
final class HandOutXlsx {

  /** Columns beside the used ones in which something can be written. */
  private static final int BESIDE = 26;

  private final XSSFWorkbook workbook;
  private final Map<Short, CellStyle> open = new HashMap<>();

  private HandOutXlsx(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  static byte[] of(Path prepared, CourseSheet course) throws IOException {
    ByteArrayOutputStream copy = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = XlsxDocument.open(prepared)) {
      HandOutXlsx handOut = new HandOutXlsx(workbook);
      IntStream.range(0, workbook.getNumberOfSheets())
          .mapToObj(workbook::getSheetAt)
          .forEach(handOut::openBlanks);
      handOut.write(course);
      workbook.forEach(sheet -> protect((XSSFSheet) sheet));
      workbook.write(copy);
    }
    return copy.toByteArray();
  }

  private void openBlanks(XSSFSheet sheet) {
    int width = BESIDE;
    for (Row row : sheet) {
      width = Math.max(width, row.getLastCellNum() + BESIDE);
    }
    for (Row row : sheet) {
      openBlanks(row, width);
    }
    int last = Math.min(width, workbook.getSpreadsheetVersion().getMaxColumns());
    for (int column = 0; column < last; column++) {
      sheet.setDefaultColumnStyle(column, open(sheet.getColumnStyle(column)));
    }
  }

  /** A row with a style of its own passes it on to the cells that it does not hold. */
  private void openBlanks(Row row, int width) {
    for (Cell cell : row) {
      if (cell.getCellType() == CellType.BLANK) {
        cell.setCellStyle(open(cell.getCellStyle()));
      }
    }
    if (row.isFormatted()) {
      for (int column = 0; column < width; column++) {
        if (row.getCell(column) == null) {
          row.createCell(column).setCellStyle(open(row.getRowStyle()));
        }
      }
    }
  }

  private CellStyle open(CellStyle style) {
    return open.computeIfAbsent(
        style.getIndex(),
        index -> {
          CellStyle copy = workbook.createCellStyle();
          copy.cloneStyleFrom(style);
          copy.setLocked(false);
          return copy;
        });
  }

  /** Formats, widths and drawings stay free: what is kept is what the cells hold. */
  private static void protect(XSSFSheet sheet) {
    sheet.enableLocking();
    sheet.lockFormatCells(false);
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
    sheet.lockObjects(false);
    sheet.lockScenarios(false);
  }

  private void write(CourseSheet course) {
    List<String> taken =
        IntStream.range(0, workbook.getNumberOfSheets()).mapToObj(workbook::getSheetName).toList();
    XSSFSheet sheet = workbook.createSheet(CourseSheet.name(taken));
    int next = 0;
    for (List<Value> row : course.convention()) {
      Row cells = sheet.createRow(next++);
      for (int column = 0; column < row.size(); column++) {
        put(cells.createCell(column), row.get(column));
      }
    }
    next = course.profileTop();
    for (String line : course.profile()) {
      sheet.createRow(next++).createCell(0).setCellValue(line);
    }
    sheet.setColumnWidth(0, 16 * 256);
    name(WorkbookConvention.NAME, sheet, "$A$1:$C$" + course.convention().size());
    name(
        InsideProfile.NAME,
        sheet,
        "$A$" + (course.profileTop() + 1) + ":$A$" + (course.profileBottom() + 1));
  }

  private static void put(Cell cell, Value value) {
    if (value instanceof Value.Numeric number) {
      cell.setCellValue(number.number());
    } else {
      cell.setCellValue(((Value.Text) value).text());
    }
  }

  private void name(String name, XSSFSheet sheet, String range) {
    Name defined = workbook.createName();
    defined.setNameName(name);
    defined.setRefersToFormula("'" + sheet.getSheetName() + "'!" + range);
  }
}
