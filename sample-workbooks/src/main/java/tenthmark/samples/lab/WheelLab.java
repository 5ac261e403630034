package tenthmark.samples.lab;

import static tenthmark.samples.lab.RecordColumns.COUNTS;
import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.PERCENT;
import static tenthmark.samples.lab.RecordColumns.QUANTITY;
import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.RESOLUTION;
import static tenthmark.samples.lab.RecordColumns.RESULT;
import static tenthmark.samples.lab.RecordColumns.SYMBOL;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;
import static tenthmark.samples.lab.RecordColumns.UNIT;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import java.util.ArrayList;
import java.util.List;
import tenthmark.samples.plan.Column;
import tenthmark.samples.plan.Lines;
import tenthmark.samples.plan.Matrix;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;
import tenthmark.samples.plan.WorkbookPlan;

/**
 * The moment of inertia of a wheel that a falling mass turns by a cord round its hub: the mass
 * falls s in the time sqrt(2 s/a), and I = m (d/2)^2 (g/a - 1) if the bearings turn freely.
 */
final class WheelLab {

  private static final Column FALL = Column.given("fall", "Fall", 34);
  private static final Column DISTANCE = Column.typed("distance", "Distance (m)", 15);
  private static final Column TIME = Column.typed("time", "Time (s)", 15);
  private static final Column TIME_ERROR = Column.given("ut", "u(time) (s)", 15);
  private static final Column LN_DISTANCE = Column.given("lns", "ln(distance/m)", 15);
  private static final Column LN_TIME = Column.given("lnt", "ln(time/s)", 15);
  private static final Column LN_ERROR = Column.given("ulnt", "u(ln(time/s))", 15);

  private static final Table FALLS =
      new Table(
          "falls",
          "Falls of the mass",
          List.of(FALL, DISTANCE, TIME, TIME_ERROR, LN_DISTANCE, LN_TIME, LN_ERROR),
          falls(
              new double[][] {
                {0.2, 2.85}, {0.4, 3.97}, {0.6, 4.93}, {0.8, 5.61}, {1.0, 6.38}, {1.2, 6.88}
              }));

  private static final Lines START =
      new Lines(
          "Where the fit of the curve starts", "B", List.of(new Lines.Line("guess", "a", 0.1)));

  private static final Matrix CURVE =
      new Matrix(
          "curve",
          "Curve: time = sqrt(2 distance/a), with a in m/s^2",
          List.of("Part", "Number", "Uncertainty"),
          guarded(
              "LAB_CURVE(\"SQRT(2*x/a)\",{falls.distance},{falls.time},{falls.ut},"
                  + "{guess.labelled})"),
          4,
          "0.0000");

  private static final Matrix LINE =
      new Matrix(
          "line",
          "Log line: ln(time) against ln(distance)",
          List.of("Part", "Number"),
          guarded("LAB_LINE({falls.lns},{falls.lnt},0,{falls.ulnt})"),
          8,
          "0.0000");

  private static final Lines EXPONENT =
      new Lines(
          "Is the exponent a half, as for steady acceleration?",
          "E",
          List.of(
              new Lines.Line(
                  "exponent",
                  "Slope against 1/2",
                  guarded("LAB_AGREE({line.1.2},{line.3.2},0.5,0)"))));

  private static final Table RECORDS =
      new Table(
          "records",
          "Records",
          List.of(
              QUANTITY,
              SYMBOL,
              VALUE,
              UNIT,
              RESOLUTION,
              PERCENT,
              COUNTS,
              INSTRUMENT,
              UNCERTAINTY,
              RESULT,
              RATIONALE),
          List.of(
              Records.display("m", "Falling mass", "kg", 0.0001, 0.1, 2)
                  .with(VALUE, 0.5012)
                  .with(RATIONALE, "Instrument: the balance's maker states 0.1 % and two counts.")
                  .shown("0.00000"),
              Records.display("d", "Hub, diameter", "mm", 0.01, 0, 3)
                  .with(VALUE, 60.21)
                  .with(RATIONALE, "Instrument: the digital caliper's maker states three counts.")
                  .shown("0.000"),
              Records.calculated(
                      "a", "Acceleration of the mass", "m/s^2", "{falls.time}", 3, "{curve.1.2}")
                  .with(UNCERTAINTY, "={curve.1.3}")
                  .with(
                      RATIONALE,
                      "From the curve through six falls; each time with the reaction and the"
                          + " stopwatch's last digit.")
                  .shown("0.00000"),
              Records.calculated(
                      "I",
                      "Wheel, moment of inertia",
                      "kg m^2",
                      "{m.value}:{a.value}",
                      3,
                      "{m.value}*({d.value}/2000)^2*({g}/{a.value}-1)")
                  .with(
                      UNCERTAINTY,
                      "=IF({value}=\"\",\"\",LAB_CARRY({value},{m.value}:{a.value},"
                          + "{m.uncertainty}:{a.uncertainty}))")
                  .shown("0.0000")));

  private static final Lines CONSTANTS =
      new Lines(
          "Constants",
          "B",
          List.of(new Lines.Line("g", "Acceleration of free fall (m/s^2)", 9.81)));

  static final Lab LAB =
      new Lab(
          "lab-6-wheel",
          new WorkbookPlan(
              "Bicycle workshop, lab 6: moment of inertia of a wheel",
              Lab.TASK + " The falls go on the second sheet.",
              List.of(
                  SheetPlan.of("Records", RECORDS, CONSTANTS),
                  SheetPlan.of("Falls", FALLS, START, CURVE, LINE, EXPONENT))));

  private WheelLab() {}

  private static String guarded(String formula) {
    return "=IF(COUNT({falls.time})>2," + formula + ",\"\")";
  }

  private static List<Row> falls(double[][] falls) {
    List<Row> rows = new ArrayList<>();
    for (double[] fall : falls) {
      int number = rows.size() + 1;
      rows.add(
          Row.of("fall" + number)
              .with(FALL, number)
              .with(DISTANCE, fall[0])
              .with(TIME, fall[1])
              .with(TIME_ERROR, "=IF({time}=\"\",\"\",LAB_HANDTIMED()+LAB_DISPLAY(0.01))")
              .with(LN_DISTANCE, "=IF({distance}=\"\",\"\",LN({distance}))")
              .with(LN_TIME, "=IF({time}=\"\",\"\",LN({time}))")
              .with(LN_ERROR, "=IF({time}=\"\",\"\",{ut}/{time})")
              .shown("0.000"));
    }
    return rows;
  }
}
