package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.line.Line;

/** LAB_SLOPEERROR: the uncertainty of that slope. */
@AutoService(WorksheetFunction.class)
public final class LabSlopeError extends LineNumber {

  /** For the service loader. */
  public LabSlopeError() {
    super(
        "SLOPEERROR",
        FunctionRole.SLOPE_UNCERTAINTY,
        "Gives the standard uncertainty of the slope of the line fitted to points.",
        Line::slopeUncertainty,
        "0.02986");
  }
}
