package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.line.Line;

/** LAB_SLOPE: the slope of a fitted line. */
@AutoService(WorksheetFunction.class)
public final class LabSlope extends LineNumber {

  /** For the service loader. */
  public LabSlope() {
    super(
        "SLOPE",
        FunctionRole.SLOPE,
        "Gives the slope of the straight line fitted to points.",
        Line::slope,
        "1.495");
  }
}
