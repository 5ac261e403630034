package tenthmark.samples.lab;

import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.QUANTITY;
import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.REPEAT;
import static tenthmark.samples.lab.RecordColumns.RESULT;
import static tenthmark.samples.lab.RecordColumns.SYMBOL;
import static tenthmark.samples.lab.RecordColumns.TIMING;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;
import static tenthmark.samples.lab.RecordColumns.UNIT;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import java.util.ArrayList;
import java.util.List;
import tenthmark.samples.plan.Column;
import tenthmark.samples.plan.Matrix;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;
import tenthmark.samples.plan.WorkbookPlan;

/** Times taken by hand, once and again. */
final class TimingLab {

  private static final Column RUN = Column.given("run", "Run", 22);
  private static final Column TIME = Column.typed("time", "Ten swings (s)", 18);

  private static final Table RUNS =
      new Table(
          "runs",
          "A wheel hung by its rim: ten swings",
          List.of(RUN, TIME),
          runs(15.83, 15.71, 15.92, 15.88, 15.76, 15.84));

  private static final Matrix STRAYS =
      new Matrix(
          "strays",
          "Is any run suspect?",
          List.of("Distance from the mean", "Verdict"),
          "=IF(COUNT({runs.time})>2,LAB_STRAYS({runs.time}),\"\")",
          6,
          "0.00");

  private static final Table RECORDS =
      new Table(
          "records",
          "Records",
          List.of(
              QUANTITY,
              SYMBOL,
              VALUE,
              UNIT,
              TIMING,
              INSTRUMENT,
              REPEAT,
              UNCERTAINTY,
              RESULT,
              RATIONALE),
          List.of(
              timed("t1", "Wheel, time to come to rest")
                  .with(VALUE, 41.3)
                  .with(
                      RATIONALE,
                      "Taken once. Timing: reaction at start and stop. Instrument: the"
                          + " stopwatch's last digit."),
              timed("t10", "Wheel, mean time of ten swings")
                  .with(VALUE, "=IF(COUNT({runs.time})=0,\"\",AVERAGE({runs.time}))")
                  .with(REPEAT, "=IF(COUNT({runs.time})<2,\"\",LAB_REPEATS({runs.time},\"sdom\"))")
                  .with(
                      RATIONALE,
                      "Timing: reaction at start and stop, the same in every run. Instrument: the"
                          + " stopwatch's last digit. Repeat: the scatter of six runs."),
              Records.calculated("T", "Wheel, one swing", "s", "{t10.value}", 1, "{t10.value}/10")
                  .with(
                      UNCERTAINTY,
                      "=IF(COUNT({t10.uncertainty})=0,\"\","
                          + "LAB_CARRY({value},{t10.value},{t10.uncertainty}))")
                  .shown("0.0000")));

  static final Lab LAB =
      new Lab(
          "lab-3-timing",
          new WorkbookPlan(
              "Bicycle workshop, lab 3: hand timing and repeats",
              Lab.TASK + " The runs go on the second sheet.",
              List.of(SheetPlan.of("Records", RECORDS), SheetPlan.of("Runs", RUNS, STRAYS))));

  private TimingLab() {}

  private static Row timed(String symbol, String quantity) {
    return Records.measured(symbol, quantity, "s")
        .with(TIMING, "=IF({value}=\"\",\"\",LAB_HANDTIMED())")
        .with(INSTRUMENT, "=IF({value}=\"\",\"\",LAB_DISPLAY(0.01))")
        .shown("0.000");
  }

  private static List<Row> runs(double... times) {
    List<Row> rows = new ArrayList<>();
    for (double time : times) {
      int run = rows.size() + 1;
      rows.add(Row.of("run" + run).with(RUN, run).with(TIME, time));
    }
    return rows;
  }
}
