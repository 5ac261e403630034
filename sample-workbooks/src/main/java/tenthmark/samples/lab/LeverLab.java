package tenthmark.samples.lab;

import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;

import java.util.ArrayList;
import java.util.List;
import tenthmark.samples.plan.Column;
import tenthmark.samples.plan.Lines;
import tenthmark.samples.plan.Matrix;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;
import tenthmark.samples.plan.WorkbookPlan;

/** The spring rate of a brake lever from a line, and from the steepest and the shallowest one. */
final class LeverLab {

  private static final Column PULL = Column.given("pull", "Pull", 34);
  private static final Column TRAVEL = Column.typed("travel", "Travel (mm)", 16);
  private static final Column FORCE = Column.typed("force", "Force (N)", 16);
  private static final Column TRAVEL_ERROR = Column.given("ux", "u(travel) (mm)", 16);
  private static final Column FORCE_ERROR = Column.given("uy", "u(force) (N)", 16);
  private static final String LINE_ARGUMENTS =
      "{points.travel},{points.force},{points.ux},{points.uy}";

  private static final Table POINTS =
      new Table(
          "points",
          "Pulls at the lever's end",
          List.of(PULL, TRAVEL, FORCE, TRAVEL_ERROR, FORCE_ERROR),
          pulls(
              new double[][] {
                {2.1, 4.9}, {4.0, 9.8}, {6.2, 14.7}, {8.1, 19.6}, {10.3, 24.5}, {12.2, 29.4}
              }));

  private static final Table RECORDS =
      new Table(
          "records",
          "Records",
          RecordColumns.CALCULATED,
          List.of(
              rate("k", "Brake lever, spring rate", "LAB_SLOPE(" + LINE_ARGUMENTS + ")")
                  .with(UNCERTAINTY, guarded("LAB_SLOPEERROR(" + LINE_ARGUMENTS + ")"))
                  .with(
                      RATIONALE,
                      "Slope of the best line through six pulls; a quarter of the rule's division at"
                          + " both ends, and the force gauge maker's 0.5 % and one count."),
              rate("k2", "Brake lever, spring rate by extremes", "{extremes.5.2}")
                  .with(UNCERTAINTY, "={extremes.6.2}")
                  .with(
                      RATIONALE,
                      "Half the difference between the steepest and the shallowest line through all"
                          + " error bars: a bound.")));

  private static final Lines COMPARISON =
      new Lines(
          "Best line against extremes",
          "E",
          List.of(
              new Lines.Line(
                  "agree",
                  "Do they agree?",
                  guarded("LAB_AGREE({k.value},{k.uncertainty},{k2.value},{k2.uncertainty})"))));

  private static final Matrix LINE =
      new Matrix(
          "line",
          "Best line",
          List.of("Part", "Number"),
          guarded("LAB_LINE(" + LINE_ARGUMENTS + ")"),
          8,
          "0.0000");

  private static final Matrix EXTREMES =
      new Matrix(
          "extremes",
          "Steepest and shallowest line through all error bars",
          List.of("Part", "Number"),
          guarded("LAB_STEEPSHALLOW(" + LINE_ARGUMENTS + ")"),
          8,
          "0.0000");

  static final Lab LAB =
      new Lab(
          "lab-5-lever",
          new WorkbookPlan(
              "Bicycle workshop, lab 5: spring rate of a brake lever",
              Lab.TASK + " The pulls go on the second sheet.",
              List.of(
                  SheetPlan.of("Records", RECORDS, COMPARISON),
                  SheetPlan.of("Pulls", POINTS, LINE, EXTREMES))));

  private LeverLab() {}

  private static Row rate(String symbol, String quantity, String formula) {
    return Records.calculated(symbol, quantity, "N/mm", "{points.force}", 3, formula)
        .shown("0.0000");
  }

  private static String guarded(String formula) {
    return "=IF(COUNT({points.force})>2," + formula + ",\"\")";
  }

  private static List<Row> pulls(double[][] pulls) {
    List<Row> rows = new ArrayList<>();
    for (double[] pull : pulls) {
      int number = rows.size() + 1;
      rows.add(
          Row.of("pull" + number)
              .with(PULL, number)
              .with(TRAVEL, pull[0])
              .with(FORCE, pull[1])
              .with(TRAVEL_ERROR, "=IF({travel}=\"\",\"\",LAB_READING(1,\"fine\",2))")
              .with(FORCE_ERROR, "=IF({force}=\"\",\"\",LAB_DISPLAY(0.1,{force},0.5,1))")
              .shown("0.000"));
    }
    return rows;
  }
}
