package tenthmark.checker.workbook;

import java.util.Optional;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.NamedFormula;
import tenthmark.measurement.formula.SheetSize;

/**
 * A name that the workbook defines.
 *
 * @param name as it is spelt; letter case does not matter
 * @param sheet the sheet on which it holds, or empty for all sheets
 * @param meaning what it stands for, in the notation of {@link Content.Formula#text()}
 */
public record DefinedName(String name, Optional<String> sheet, NamedFormula meaning) {

  /** A name whose formula is seen from A1, as .xlsx and .xls files store it. */
  static DefinedName seenFromA1(
      String name, Optional<String> sheet, String formula, SheetSize size) {
    return new DefinedName(
        name, sheet, new NamedFormula(formula, new CellAddress(sheet.orElse(""), 0, 0), size));
  }

  /** The formula that it stands for. */
  public String formula() {
    return meaning.text();
  }
}
