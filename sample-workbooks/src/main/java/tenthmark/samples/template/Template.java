package tenthmark.samples.template;

import static tenthmark.samples.template.RecordTable.BOUND;
import static tenthmark.samples.template.RecordTable.BY_HAND;
import static tenthmark.samples.template.RecordTable.COUNTS;
import static tenthmark.samples.template.RecordTable.DIVISION;
import static tenthmark.samples.template.RecordTable.PERCENT;
import static tenthmark.samples.template.RecordTable.QUANTITY;
import static tenthmark.samples.template.RecordTable.RATIONALE;
import static tenthmark.samples.template.RecordTable.RESOLUTION;
import static tenthmark.samples.template.RecordTable.SPACING;
import static tenthmark.samples.template.RecordTable.SYMBOL;
import static tenthmark.samples.template.RecordTable.UNIT;
import static tenthmark.samples.template.RecordTable.VALUE;

import java.util.List;
import java.util.Optional;
import tenthmark.samples.plan.Copy;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.WorkbookPlan;

/**
 * A workbook to start from with measurements of one's own.
 *
 * @param file the beginning of its files' names
 * @param plan its workbook; the completed copy holds an example
 * @param graph what a real Calc draws into it
 */
public record Template(String file, WorkbookPlan plan, Optional<Graph> graph) {

  private static final String CAUTION =
      "A teaching aid: not for calibration, safety or legal decisions. Work on brakes and tyres"
          + " follows the maker's manual and the lab's safety rules.";

  private static final String TASK =
      "Fill in the white cells; shaded ones are given or calculated. Columns that a record does not"
          + " need stay empty.";

  private static final String GRAPH_TASK =
      "Fill in the white cells; shaded ones are given or calculated. The brake lever is invented:"
          + " write your own quantities over it, in the graph too.";

  /** The name of a copy's files, without their ending. */
  public String fileName(Copy copy) {
    return copy == Copy.START ? file : file + "-filled-in";
  }

  /** All of them, the simplest first. */
  public static List<Template> all() {
    return List.of(recordTable(), tableWithGraph(), fullReport());
  }

  private static Template recordTable() {
    List<Row> examples =
        List.of(
            RecordTable.length("L", "Crank arm, axle to pedal hole", 172.4, 0.5, 0.2)
                .with(
                    RATIONALE,
                    "Reading: both ends on the crank rule, a quarter of a division each. Physical:"
                        + " the middle of each hole to 0.2 mm."),
            RecordTable.record("m")
                .with(QUANTITY, "Crank, mass")
                .with(SYMBOL, "m")
                .with(VALUE, 214.6)
                .with(UNIT, "g")
                .with(RESOLUTION, 0.1)
                .with(PERCENT, 0.1)
                .with(COUNTS, 2)
                .with(RATIONALE, "Instrument: the balance's maker states 0.1 % and two counts."),
            RecordTable.record("p")
                .with(QUANTITY, "Tyre pressure, dial gauge")
                .with(SYMBOL, "p")
                .with(VALUE, 4.15)
                .with(UNIT, "bar")
                .with(DIVISION, 0.5)
                .with(SPACING, "wide")
                .with(BOUND, 0.1)
                .with(
                    RATIONALE,
                    "Reading: a tenth of a division, the marks are wide apart. Instrument: the dial"
                        + " gauge's maker states 0.1 bar."),
            RecordTable.record("t")
                .with(QUANTITY, "Wheel, time to come to rest")
                .with(SYMBOL, "t")
                .with(VALUE, 41.3)
                .with(UNIT, "s")
                .with(RESOLUTION, 0.01)
                .with(BY_HAND, "yes")
                .with(
                    RATIONALE,
                    "Taken once. Timing: reaction at start and stop. Instrument: the stopwatch's"
                        + " last digit."));
    return new Template(
        "record-table",
        new WorkbookPlan("Record table", CAUTION, TASK, List.of(RecordTable.sheet(examples))),
        Optional.empty());
  }

  private static Template tableWithGraph() {
    return new Template(
        "table-with-graph",
        new WorkbookPlan(
            "Table with graph",
            CAUTION,
            GRAPH_TASK,
            List.of(PointsSheets.points(), PointsSheets.lineWithResults())),
        Optional.of(PointsSheets.GRAPH));
  }

  private static Template fullReport() {
    SheetPlan records =
        RecordTable.sheet(
            List.of(
                RecordTable.length("r-read", "Brake lever, pivot to finger", 84.5, 1, 1)
                    .with(SYMBOL, "r")
                    .with(
                        RATIONALE,
                        "Reading: both ends on the rule, a quarter of a division each. Physical: the"
                            + " middle of the pivot and of the finger to 1 mm.")));
    return new Template(
        "full-report",
        new WorkbookPlan(
            "Lab report",
            CAUTION,
            GRAPH_TASK,
            List.of(ReportSheet.sheet(), records, PointsSheets.points(), PointsSheets.line())),
        Optional.of(PointsSheets.GRAPH));
  }
}
