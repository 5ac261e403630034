package tenthmark.checker.evaluation;

import tenthmark.measurement.catalogue.Value;

/** What recalculating a cell gave. */
public sealed interface Outcome {

  /** A value; an error of the spreadsheet is a {@link Value.Fault} with the error's name. */
  record Known(Value value) implements Outcome {}

  /** The checker cannot tell, which is nobody's fault; the reason is one plain sentence part. */
  record NotCheckable(String reason) implements Outcome {}
}
