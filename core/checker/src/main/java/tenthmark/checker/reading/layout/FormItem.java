package tenthmark.checker.reading.layout;

import java.util.Optional;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;

/**
 * A label and the number that it names.
 *
 * @param uncertainty a number behind the value that is its uncertainty
 * @param signed whether a sign stands before the uncertainty
 * @param unitCell the unit behind it, perhaps with words that lead on to the uncertainty
 * @param unit that this states, or empty
 * @param reason a text behind all that
 */
record FormItem(
    TypedCell label,
    Heading heading,
    TypedCell value,
    Optional<TypedCell> uncertainty,
    boolean signed,
    Optional<TypedCell> unitCell,
    String unit,
    Optional<TypedCell> reason) {

  int row() {
    return value.address().row();
  }

  int column() {
    return value.address().column();
  }

  /** The unit behind the value, or in the label. */
  String anyUnit() {
    return unit().isEmpty() ? heading.unit() : unit();
  }

  /** The cell behind the value, if it holds a unit and nothing else. */
  Optional<TypedCell> merelyUnit() {
    return unitCell.filter(cell -> HeadingGrammar.bare(cell.text()).equals(unit));
  }
}
