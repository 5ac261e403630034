package tenthmark.samples.book;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The few cell styles of the sample workbooks.
 *
 * @param title a sheet's or a table's title
 * @param heading a column heading
 * @param cell a cell of a table
 * @param result a cell that states a result
 * @param remark text that explains
 * @param note text that explains, without a box
 * @param given a cell of a table that is filled in from the start
 * @param warning text that says what is missing
 */
public record Styles(
    XSSFCellStyle title,
    XSSFCellStyle heading,
    XSSFCellStyle cell,
    XSSFCellStyle result,
    XSSFCellStyle remark,
    XSSFCellStyle note,
    XSSFCellStyle given,
    XSSFCellStyle warning) {

  /** One that Calc has, or has a twin of, on every system. */
  private static final String FONT = "Arial";

  private static final byte[] PALE_SLATE = {(byte) 0xE3, (byte) 0xE8, (byte) 0xEE};
  private static final byte[] DARK_RED = {(byte) 0xA0, (byte) 0x1C, (byte) 0x1C};
  private static final byte[] FAINT_SLATE = {(byte) 0xF3, (byte) 0xF5, (byte) 0xF8};

  static Styles of(XSSFWorkbook workbook) {
    workbook.getFontAt(0).setFontName(FONT);
    XSSFCellStyle title = workbook.createCellStyle();
    XSSFFont large = bold(workbook);
    large.setFontHeightInPoints((short) 13);
    title.setFont(large);

    XSSFCellStyle cell = boxed(workbook);
    XSSFCellStyle result = boxed(workbook);
    result.setFont(bold(workbook));

    XSSFCellStyle heading = boxed(workbook);
    heading.setFont(bold(workbook));
    heading.setAlignment(HorizontalAlignment.CENTER);
    fill(heading, PALE_SLATE);

    XSSFCellStyle remark = boxed(workbook);
    XSSFFont slanted = font(workbook);
    slanted.setItalic(true);
    remark.setFont(slanted);
    XSSFCellStyle note = workbook.createCellStyle();
    note.setFont(slanted);

    XSSFCellStyle given = boxed(workbook);
    fill(given, FAINT_SLATE);

    XSSFCellStyle warning = workbook.createCellStyle();
    XSSFFont red = bold(workbook);
    red.setColor(new XSSFColor(DARK_RED, null));
    warning.setFont(red);
    return new Styles(title, heading, cell, result, remark, note, given, warning);
  }

  private static void fill(XSSFCellStyle style, byte[] colour) {
    style.setFillForegroundColor(new XSSFColor(colour, null));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }

  private static XSSFFont bold(XSSFWorkbook workbook) {
    XSSFFont font = font(workbook);
    font.setBold(true);
    return font;
  }

  private static XSSFFont font(XSSFWorkbook workbook) {
    XSSFFont font = workbook.createFont();
    font.setFontName(FONT);
    return font;
  }

  private static XSSFCellStyle boxed(XSSFWorkbook workbook) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setBorderTop(BorderStyle.THIN);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBorderLeft(BorderStyle.THIN);
    style.setBorderRight(BorderStyle.THIN);
    return style;
  }
}
