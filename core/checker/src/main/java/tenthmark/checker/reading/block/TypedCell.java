package tenthmark.checker.reading.block;

import java.util.Optional;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;

/**
 * A cell by what its value is.
 *
 * @param text of a text, stripped; empty for any other kind
 * @param number of a number; not a number for any other kind
 */
public record TypedCell(Cell cell, Kind kind, String text, double number) {

  /** What a value is. */
  public enum Kind {
    NUMBER,
    TEXT,
    /** An error, or nothing that the checker can calculate. */
    UNKNOWN
  }

  /** Where it stands. */
  public CellAddress address() {
    return cell.address();
  }

  /** Whether it is a number. */
  public boolean isNumber() {
    return kind == Kind.NUMBER;
  }

  /** Whether it is a text. */
  public boolean isText() {
    return kind == Kind.TEXT;
  }

  /** Whether a number is or may be there. */
  public boolean mayBeNumber() {
    return kind != Kind.TEXT;
  }

  /** Its formula, if it has one. */
  public Optional<Content.Formula> formula() {
    return cell.content() instanceof Content.Formula formula
        ? Optional.of(formula)
        : Optional.empty();
  }

  /** Whether it is a formula. */
  public boolean isFormula() {
    return cell.content() instanceof Content.Formula;
  }

  /** Whether it is one of several that a single formula fills: what a function says. */
  public boolean isOfMatrix() {
    return formula()
        .flatMap(Content.Formula::array)
        .filter(area -> area.height() > 1 || area.width() > 1)
        .isPresent();
  }

  /** Whether it is a number that was typed. */
  public boolean isTyped() {
    return isNumber() && !isFormula();
  }
}
