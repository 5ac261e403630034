package tenthmark.checker.evaluation;

import java.util.List;
import java.util.Optional;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellRange;

/**
 * A call of a LAB function within a formula.
 *
 * @param function its display name, in upper case
 */
public record Call(String function, List<Argument> arguments) {

  /**
   * An argument that is a literal or a reference; any other expression has neither part.
   *
   * @param value the literal, or the recalculated value of the one cell referred to
   * @param range the cells referred to
   */
  public record Argument(Optional<Value> value, Optional<CellRange> range) {}

  /** The argument at a position counted from 0, if it was given. */
  public Optional<Argument> argument(int index) {
    return index < arguments.size() ? Optional.of(arguments.get(index)) : Optional.empty();
  }
}
