package tenthmark.checker.evaluation;

import java.util.Set;
import tenthmark.measurement.catalogue.Value;

/** What recalculation has found out about a cell. */
record Recalculated(Outcome outcome, Set<Trait> traits) {

  /** A cell without a formula. */
  static Recalculated of(Value value) {
    return new Recalculated(new Outcome.Known(value), Set.of());
  }

  boolean is(Trait trait) {
    return traits.contains(trait);
  }
}
