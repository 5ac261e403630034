package tenthmark.addin.notice;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.FontWeight;
import com.sun.star.beans.XPropertySet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import java.util.List;
import java.util.Optional;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/**
 * The cell that says what to install where the functions cannot be called, and nothing elsewhere.
 * The templates have one too.
 */
public final class Notice {

  private static final String FUNCTION = "TENTHMARK.LAB.";
  private static final String CONDITION = "ISERROR(" + FUNCTION + "HANDTIMED())";

  /** Rows from the end of what is there: one stays blank, so that nobody takes it for a record. */
  private static final int BELOW = 2;

  private static final int DARK_RED = 0xA01C1C;

  private final List<SheetCells> sheets;

  /** That of a document. */
  public Notice(Spreadsheet document) throws Exception {
    this.sheets = document.sheets();
  }

  /** Whether the document has one. */
  public boolean isThere() throws Exception {
    return firstWith(CONDITION).isPresent();
  }

  /** The first sheet that uses our functions. */
  public Optional<SheetCells> firstSheetInNeed() throws Exception {
    return firstWith(FUNCTION);
  }

  private Optional<SheetCells> firstWith(String text) throws Exception {
    for (SheetCells sheet : sheets) {
      if (sheet.hasFormulaWith(text)) {
        return Optional.of(sheet);
      }
    }
    return Optional.empty();
  }

  /**
   * Puts it below all that is on a sheet, in the first column used; nowhere if there is no room.
   */
  public Optional<XCell> addTo(SheetCells sheet, Language language) throws Exception {
    CellRangeAddress used = sheet.usedArea();
    return addBelow(sheet, used.StartColumn, used.EndColumn, used.EndRow, language);
  }

  /** Puts it below a rectangle, in its first column, where the row is empty between its sides. */
  public Optional<XCell> addBelow(
      SheetCells sheet, int left, int right, int bottom, Language language) throws Exception {
    for (int row = bottom + BELOW; sheet.reaches(left, row); row++) {
      if (sheet.isEmpty(left, row, right, row)) {
        XCell cell = sheet.cell(left, row);
        cell.setFormula(formula(language));
        XPropertySet look = queryInterface(XPropertySet.class, cell);
        look.setPropertyValue("CharWeight", FontWeight.BOLD);
        look.setPropertyValue("CharColor", DARK_RED);
        return Optional.of(cell);
      }
    }
    return Optional.empty();
  }

  private static String formula(Language language) {
    String sentence = Sentences.in(language, DecimalSign.POINT).say("functions.missing");
    return "=IF(" + CONDITION + ";\"" + sentence.replace("\"", "\"\"") + "\";\"\")";
  }
}
