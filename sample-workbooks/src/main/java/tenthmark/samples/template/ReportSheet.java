package tenthmark.samples.template;

import java.util.List;
import tenthmark.samples.lab.RecordColumns;
import tenthmark.samples.lab.Records;
import tenthmark.samples.plan.Lines;
import tenthmark.samples.plan.Lines.Line;
import tenthmark.samples.plan.Lines.Look;
import tenthmark.samples.plan.Matrix;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;

/**
 * The first sheet of a report: aim and method, results, comparison, conclusion. The example is the
 * stiffness of a brake lever against turning, D = k r^2, from its spring rate at the finger.
 */
final class ReportSheet {

  private static final String LAST_COLUMN = "G";
  private static final List<Integer> WIDTHS = List.of(34, 12, 13, 13, 13, 24, 52);
  private static final String INPUTS = "{k.value}:{r.value}";
  private static final String UNCERTAINTIES = "{k.uncertainty}:{r.uncertainty}";

  private static final Lines HEAD =
      new Lines(
          "Report",
          LAST_COLUMN,
          List.of(
              new Line("names", "Names", "A. Example and B. Example, invented", Look.LINE),
              new Line("day", "Day and place", "First bench session, bicycle workshop", Look.LINE),
              new Line(
                  "aim",
                  "Aim",
                  "The stiffness of a brake lever against turning about its pivot.",
                  Look.PROSE),
              new Line(
                  "method",
                  "Method",
                  "A force gauge pulls the lever at the finger; its travel is read off a rule. The"
                      + " slope of force against travel is the spring rate k, and D = k r^2 with the"
                      + " distance r from pivot to finger.",
                  Look.PROSE)));

  private static final Table RESULTS =
      new Table(
          "results",
          "Results",
          RecordColumns.CALCULATED,
          List.of(
              PointsSheets.SLOPE,
              Records.calculated(
                      "r", "Brake lever, arm", "mm", "{r-read.value}", 1, "{r-read.value}")
                  .with(
                      RecordColumns.UNCERTAINTY,
                      "=IF(COUNT({r-read.uncertainty})=0,\"\",{r-read.uncertainty})")
                  .with(RecordColumns.RATIONALE, "From the records.")
                  .shown("0.00"),
              Records.calculated(
                      "D",
                      "Brake lever, stiffness against turning",
                      "N mm",
                      INPUTS,
                      2,
                      "{k.value}*{r.value}^2")
                  .with(
                      RecordColumns.UNCERTAINTY,
                      "=IF({value}=\"\",\"\",LAB_CARRY({value},"
                          + INPUTS
                          + ","
                          + UNCERTAINTIES
                          + "))")
                  .with(
                      RecordColumns.RATIONALE,
                      "D = k r^2, per radian; carried from the spring rate and the arm.")
                  .shown("0")));

  private static final Matrix SHARES =
      new Matrix(
          "shares",
          "Where the uncertainty of the last result comes from",
          List.of("Input", "Value", "Uncertainty", "Sensitivity", "Contribution", "Share"),
          "=IF(COUNT({D.uncertainty})=1,LAB_CARRYTABLE({D.value},"
              + INPUTS
              + ","
              + UNCERTAINTIES
              + "),\"\")",
          3,
          "0.000");

  private static final Lines COMPARISON =
      new Lines(
          "Comparison with an accepted value",
          LAST_COLUMN,
          List.of(
              new Line("accepted", "Accepted value", 17200, Look.TYPED),
              new Line("allowed", "Its uncertainty", 300, Look.TYPED),
              new Line(
                  "agree",
                  "Do they agree?",
                  "=IF(COUNT({D.uncertainty},{accepted},{allowed})<3,\"\","
                      + "LAB_AGREE({D.value},{D.uncertainty},{accepted},{allowed}))")));

  private static final Lines CONCLUSION =
      new Lines(
          "Conclusion",
          LAST_COLUMN,
          List.of(
              new Line(
                  "conclusion",
                  "What follows, and what would be better",
                  "The stiffness agrees with that of the stand's drawing. Most of the uncertainty is"
                      + " the arm's: a pin in the pivot would give its middle.",
                  Look.PROSE)));

  private ReportSheet() {}

  static SheetPlan sheet() {
    return new SheetPlan("Report", WIDTHS, List.of(HEAD, RESULTS, SHARES, COMPARISON, CONCLUSION));
  }
}
