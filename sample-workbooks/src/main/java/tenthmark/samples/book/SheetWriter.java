package tenthmark.samples.book;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import tenthmark.measurement.catalogue.Catalogue;

/** Puts contents into the cells of one sheet, addressed as a user reads them ({@code B4}). */
public final class SheetWriter {

  private static final Pattern LAB_CALL = Pattern.compile("LAB_[A-Z]+");

  private final Sheet sheet;
  private final Catalogue catalogue;

  /** Writes into this sheet; the catalogue knows how LAB functions are stored. */
  public SheetWriter(Sheet sheet, Catalogue catalogue) {
    this.sheet = sheet;
    this.catalogue = catalogue;
  }

  /**
   * A number, a text (blank if empty), or a formula with its equals sign and the functions' display
   * names.
   */
  public void put(String address, Object content, CellStyle style) {
    Cell cell = cell(address);
    cell.setBlank();
    if (content instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else if (content instanceof String text && text.startsWith("=")) {
      cell.setCellFormula(stored(text.substring(1)));
    } else if (!content.equals("")) {
      cell.setCellValue((String) content);
    }
    cell.setCellStyle(style);
  }

  /** A formula that fills a block of cells as one matrix. */
  public void putMatrix(String block, String formula, CellStyle style) {
    sheet
        .setArrayFormula(stored(formula.substring(1)), CellRangeAddress.valueOf(block))
        .forEach(cell -> cell.setCellStyle(style));
  }

  /** One cell out of a block, with one style all over it. */
  public void merge(String block, CellStyle style) {
    CellRangeAddress range = CellRangeAddress.valueOf(block);
    range.forEach(address -> cell(address.formatAsString()).setCellStyle(style));
    sheet.addMergedRegion(range);
  }

  /** One cell out of a block, in the style of its first cell. */
  public void merge(String block) {
    merge(block, cell(block.substring(0, block.indexOf(':'))).getCellStyle());
  }

  /** Keeps the columns and rows before this cell in sight. */
  public void freezeBefore(String address) {
    CellReference place = new CellReference(address);
    sheet.createFreezePane(place.getCol(), place.getRow());
  }

  public void height(int row, float points) {
    cell("A" + row).getRow().setHeightInPoints(points);
  }

  private Cell cell(String address) {
    CellReference place = new CellReference(address);
    Row row = sheet.getRow(place.getRow());
    if (row == null) {
      row = sheet.createRow(place.getRow());
    }
    return row.getCell(place.getCol(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  private String stored(String formula) {
    return LAB_CALL.matcher(formula).replaceAll(this::storedName);
  }

  private String storedName(MatchResult call) {
    return catalogue
        .find(call.group())
        .orElseThrow(() -> new IllegalArgumentException("no function " + call.group()))
        .declaration()
        .storedName();
  }
}
