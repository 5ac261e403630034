package tenthmark.samples.template;

import java.util.ArrayList;
import java.util.List;
import tenthmark.samples.lab.RecordColumns;
import tenthmark.samples.lab.Records;
import tenthmark.samples.plan.Column;
import tenthmark.samples.plan.Lines;
import tenthmark.samples.plan.Lines.Line;
import tenthmark.samples.plan.Lines.Look;
import tenthmark.samples.plan.Matrix;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;

/** Points, their graph, and the line through them: the pulls of a brake lever as an example. */
final class PointsSheets {

  private static final Column NUMBER = Column.given("number", "Point", 28);
  private static final Column TRAVEL = Column.typed("travel", "Travel (mm)", 12);
  private static final Column FORCE = Column.typed("force", "Force (N)", 12);
  private static final Column TRAVEL_ERROR = Column.given("ux", "u(travel) (mm)", 15);
  private static final Column FORCE_ERROR = Column.given("uy", "u(force) (N)", 13);
  private static final Column END = Column.given("end", "End", 30);
  private static final int ROWS = 12;

  static final Graph GRAPH =
      new Graph("points", "fitted", TRAVEL, FORCE, TRAVEL_ERROR, FORCE_ERROR, "F");

  private static final Table POINTS =
      new Table(
          "points",
          "Points",
          List.of(NUMBER, TRAVEL, FORCE, TRAVEL_ERROR, FORCE_ERROR),
          points(
              new double[][] {
                {2.1, 11.0},
                {4.0, 15.5},
                {6.2, 21.0},
                {8.1, 25.5},
                {10.3, 30.5},
                {12.2, 36.0},
                {14.4, 40.5},
                {16.2, 45.0}
              }));

  private static final Lines INSTRUMENTS =
      new Lines(
          "Instruments",
          "B",
          List.of(
              new Line("division", "Travel: division of the rule", 1, Look.TYPED),
              new Line("spacing", "Travel: spacing of its marks", "fine", Look.TYPED),
              new Line("ends", "Travel: ends read", 2, Look.TYPED),
              new Line("digit", "Force: last digit of the display", 0.5, Look.TYPED),
              new Line("percent", "Force: maker's %", 1, Look.TYPED),
              new Line("counts", "Force: maker's counts", 1, Look.TYPED)));

  private static final Matrix LINE =
      new Matrix(
          "line",
          "Line through the points",
          List.of("Part", "Number"),
          guarded("LAB_LINE({points.travel},{points.force},{points.ux},{points.uy})"),
          8,
          "0.0000");

  private static final Table FITTED =
      new Table(
          "fitted",
          "Ends of the line in the graph",
          List.of(END, given(TRAVEL), given(FORCE).headed("Fitted line")),
          List.of(end("first", "MIN"), end("last", "MAX")));

  /** The spring rate, which is the slope of the line. */
  static final Row SLOPE =
      number("k", "Brake lever, spring rate", "N/mm", 1)
          .with(
              RecordTable.RATIONALE,
              "Slope of the line through eight pulls; a quarter of the rule's division at both ends,"
                  + " and the force gauge maker's 1 % and one count.");

  private static final Row INTERCEPT =
      number("F0", "Brake lever, force at rest", "N", 2)
          .with(RecordTable.RATIONALE, "Intercept of the same line.");

  private PointsSheets() {}

  /** The sheet with points and graph. */
  static SheetPlan points() {
    return SheetPlan.of("Points", POINTS, INSTRUMENTS);
  }

  /** The sheet with the numbers of the line, its slope and intercept stated as results. */
  static SheetPlan lineWithResults() {
    return SheetPlan.of(
        "Line",
        new Table("results", "Results", RecordColumns.CALCULATED, List.of(SLOPE, INTERCEPT)),
        LINE,
        FITTED);
  }

  /** The sheet with the numbers of the line. */
  static SheetPlan line() {
    return new SheetPlan("Line", List.of(34, 16, 16), List.of(LINE, FITTED));
  }

  private static Column given(Column column) {
    return Column.given(column.key(), column.heading(), column.width());
  }

  private static Row number(String symbol, String quantity, String unit, int place) {
    return Records.calculated(symbol, quantity, unit, "{points.force}", 3, "{line." + place + ".2}")
        .with(RecordColumns.UNCERTAINTY, guarded("{line." + (place + 2) + ".2}"))
        .shown("0.0000");
  }

  private static String guarded(String formula) {
    return "=IF(COUNT({points.force})>2," + formula + ",\"\")";
  }

  private static Row end(String key, String which) {
    return Row.of(key)
        .with(END, key)
        .with(TRAVEL, guarded(which + "({points.travel})"))
        .with(FORCE, "=IF({travel}=\"\",\"\",{line.2.2}+{line.1.2}*{travel})")
        .shown("0.000");
  }

  private static List<Row> points(double[][] pulls) {
    List<Row> rows = new ArrayList<>();
    for (int number = 1; number <= ROWS; number++) {
      Row row =
          Row.of("point" + number)
              .with(NUMBER, number)
              .with(
                  TRAVEL_ERROR,
                  "=IF(OR({travel}=\"\",{$division}=\"\",{$spacing}=\"\"),\"\","
                      + "LAB_READING({$division},{$spacing},IF({$ends}=\"\",1,{$ends})))")
              .with(
                  FORCE_ERROR,
                  "=IF(COUNT({force},{$digit})<2,\"\","
                      + "LAB_DISPLAY({$digit},{force},{$percent},IF({$counts}=\"\",1,{$counts})))")
              .shown("0.000");
      rows.add(
          number > pulls.length
              ? row
              : row.with(TRAVEL, pulls[number - 1][0]).with(FORCE, pulls[number - 1][1]));
    }
    return rows;
  }
}
