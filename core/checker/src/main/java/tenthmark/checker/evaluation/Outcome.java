package tenthmark.checker.evaluation;

import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** What recalculating a cell gave. */
public sealed interface Outcome {

  /** A value; an error of the spreadsheet is a {@link Value.Fault} with the error's name. */
  record Known(Value value) implements Outcome {}

  /**
   * The checker cannot tell, which is nobody's fault.
   *
   * @param reason for instance "the checker does not know the function LET"
   * @param origin the cell where it comes from: this one or one that it depends on
   */
  record NotCheckable(Message reason, CellAddress origin) implements Outcome {}
}
