package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.line.Line;

/** LAB_INTERCEPT: the intercept of a fitted line. */
@AutoService(WorksheetFunction.class)
public final class LabIntercept extends LineNumber {

  /** For the service loader. */
  public LabIntercept() {
    super(
        "INTERCEPT",
        FunctionRole.INTERCEPT,
        "Gives the intercept of the straight line fitted to points.",
        Line::intercept,
        "0.05");
  }
}
