package tenthmark.addin.table;

import com.sun.star.uno.Exception;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/**
 * The cell that says what to install where the functions cannot be called, and nothing elsewhere.
 * The templates have one too.
 */
final class Notice {

  private static final String CONDITION = "ISERROR(TENTHMARK.LAB.HANDTIMED())";

  /** Rows from the end of a table: one stays blank, so that nobody takes it for a record. */
  private static final int BELOW = 2;

  private Notice() {}

  /** Puts it below a table where there is room, unless the document has one. */
  static void add(Spreadsheet document, RecordTable table, Language language) throws Exception {
    for (SheetCells sheet : document.sheets()) {
      if (sheet.hasFormulaWith(CONDITION)) {
        return;
      }
    }
    SheetCells sheet = table.sheet();
    int row = table.bottom() + BELOW;
    while (sheet.reaches(table.left(), row)) {
      if (sheet.isEmpty(table.left(), row, table.right(), row)) {
        sheet.cell(table.left(), row).setFormula(formula(language));
        Look.warning(sheet.range(table.left(), row, table.left(), row));
        return;
      }
      row++;
    }
  }

  private static String formula(Language language) {
    String sentence = Sentences.in(language, DecimalSign.POINT).say("functions.missing");
    return "=IF(" + CONDITION + ";\"" + sentence.replace("\"", "\"\"") + "\";\"\")";
  }
}
