package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.line.Line;

/** LAB_INTERCEPTERROR: the uncertainty of that intercept. */
@AutoService(WorksheetFunction.class)
public final class LabInterceptError extends LineNumber {

  /** For the service loader. */
  public LabInterceptError() {
    super(
        "INTERCEPTERROR",
        FunctionRole.INTERCEPT_UNCERTAINTY,
        "Gives the standard uncertainty of the intercept of the line fitted to points.",
        Line::interceptUncertainty,
        "0.1981");
  }
}
