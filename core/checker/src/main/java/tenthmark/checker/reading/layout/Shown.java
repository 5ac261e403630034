package tenthmark.checker.reading.layout;

import java.util.Optional;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.measurement.formula.CellAddress;

/** What number formats say, which is as good as written beside the numbers. */
final class Shown {

  private static final String PLUS_OR_MINUS = "±";

  private Shown() {}

  /** The unit that a number is shown with. */
  static Optional<String> unit(TypedSheet sheet, CellAddress number, HeadingGrammar grammar) {
    return Optional.of(HeadingGrammar.bare(sheet.format(number).after())).filter(grammar::isUnit);
  }

  /** Whether a number is shown behind plus or minus. */
  static boolean isSigned(TypedSheet sheet, TypedCell cell) {
    return cell.isNumber() && sheet.format(cell.address()).before().contains(PLUS_OR_MINUS);
  }
}
