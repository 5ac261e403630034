package tenthmark.samples.book;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.wording.Sentences;

/** A sample workbook being written: its styles, and new sheets in one look. */
public final class SampleBook {

  /** What every sample says on its first sheet. */
  public static final String CAUTION =
      "A teaching aid, with invented numbers: not for calibration, safety or legal decisions. Work"
          + " on brakes and tyres follows the maker's manual and the lab's safety rules.";

  private static final int CHARACTER = 256;

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final Catalogue catalogue = Catalogue.load();
  private final Styles styles = Styles.of(workbook);

  private final Map<String, CellStyle> calculated = new HashMap<>();

  public SampleBook() {
    // The functions are not POI's own; a real Calc computes them.
    workbook.setCellFormulaValidation(false);
  }

  public XSSFWorkbook workbook() {
    return workbook;
  }

  public Styles styles() {
    return styles;
  }

  /** A cell of a table that is calculated, with its number's format. */
  public CellStyle calculated(String format) {
    return calculated.computeIfAbsent(
        format,
        numbers -> {
          CellStyle style = workbook.createCellStyle();
          style.cloneStyleFrom(styles.given());
          style.setDataFormat(workbook.createDataFormat().getFormat(numbers));
          return style;
        });
  }

  /** A new sheet that prints on one page's width; the widths of its columns are in characters. */
  public SheetWriter sheet(String name, int... widths) {
    Sheet sheet = workbook.createSheet(name);
    for (int column = 0; column < widths.length; column++) {
      sheet.setColumnWidth(column, widths[column] * CHARACTER);
    }
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    return new SheetWriter(sheet, catalogue);
  }

  /**
   * A cell that says what to install where the functions cannot be called, and nothing elsewhere.
   */
  public void noticeIfFunctionsAreMissing(SheetWriter sheet, String address) {
    sheet.put(
        address,
        "=IF(ISERROR(LAB_HANDTIMED()),\""
            + Sentences.english().say("functions.missing")
            + "\",\"\")",
        styles.warning());
  }

  /** The headings of a table, from column A on. */
  public void headings(SheetWriter sheet, int row, List<String> headings) {
    row(sheet, row, headings, styles.heading());
  }

  /** The cells of a row, from column A on, in the style of a table. */
  public void row(SheetWriter sheet, int row, List<?> cells) {
    row(sheet, row, cells, styles.cell());
  }

  private static void row(SheetWriter sheet, int row, List<?> cells, CellStyle style) {
    for (int column = 0; column < cells.size(); column++) {
      sheet.put((char) ('A' + column) + Integer.toString(row), cells.get(column), style);
    }
  }
}
