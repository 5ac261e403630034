package tenthmark.checker.carried;

import java.util.List;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** How an uncertainty that is stated for a calculated value follows from the recorded ones. */
public sealed interface Derivation {

  /** What the student states. */
  Claim claim();

  /**
   * The value was followed back to recorded measurements.
   *
   * @param carried what carrying gives: from the nearest records and, if those are calculated
   *     themselves, from the measured ones behind them
   * @param exact typed-in numbers on the way that no record holds, taken as exact
   * @param besides typed-in numbers that the uncertainty is computed from besides the records and
   *     the value's own formula, or that stand beside those taken as exact
   */
  record Followed(
      Claim claim,
      List<CarriedUncertainty> carried,
      List<CellAddress> exact,
      List<CellAddress> besides)
      implements Derivation {

    /** Copies the lists. */
    public Followed {
      carried = List.copyOf(carried);
      exact = List.copyOf(exact);
      besides = List.copyOf(besides);
    }
  }

  /**
   * The checker cannot follow the value, which is nobody's fault.
   *
   * @param reason a sentence without its end
   */
  record NotFollowed(Claim claim, Message reason) implements Derivation {}
}
