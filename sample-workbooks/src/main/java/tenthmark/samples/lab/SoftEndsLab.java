package tenthmark.samples.lab;

import static tenthmark.samples.lab.RecordColumns.DIVISION;
import static tenthmark.samples.lab.RecordColumns.ENDS;
import static tenthmark.samples.lab.RecordColumns.FAR_EDGE;
import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.NEAR_EDGE;
import static tenthmark.samples.lab.RecordColumns.PHYSICAL;
import static tenthmark.samples.lab.RecordColumns.QUANTITY;
import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.READING;
import static tenthmark.samples.lab.RecordColumns.RESULT;
import static tenthmark.samples.lab.RecordColumns.SPACING;
import static tenthmark.samples.lab.RecordColumns.SYMBOL;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;
import static tenthmark.samples.lab.RecordColumns.UNIT;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import java.util.List;
import tenthmark.samples.plan.Lines;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;
import tenthmark.samples.plan.WorkbookPlan;

/** Lengths of things whose ends are not sharp. */
final class SoftEndsLab {

  private static final Table RECORDS =
      new Table(
          "records",
          "Records",
          List.of(
              QUANTITY,
              SYMBOL,
              VALUE,
              UNIT,
              DIVISION,
              SPACING,
              ENDS,
              NEAR_EDGE,
              FAR_EDGE,
              READING,
              PHYSICAL,
              INSTRUMENT,
              UNCERTAINTY,
              RESULT,
              RATIONALE),
          List.of(
              soft("G", "Foam grip, length", 1, 3, 2)
                  .with(VALUE, 128.2)
                  .with(
                      RATIONALE,
                      "Reading: both ends on the steel rule, a quarter of a division each."
                          + " Physical: the foam gives way over 3 mm and 2 mm."),
              soft("L", "Crank arm, axle to pedal hole", 0.5, 0.2, 0.2)
                  .with(VALUE, 172.4)
                  .with(INSTRUMENT, 0.1)
                  .with(
                      RATIONALE,
                      "Reading: both ends on the crank rule, a quarter of a division each."
                          + " Physical: the middle of each hole to 0.2 mm. Instrument: its maker"
                          + " states 0.1 mm."),
              soft("D", "Tyre, outer diameter", 1, 2, 4)
                  .with(VALUE, 668)
                  .with(
                      RATIONALE,
                      "Reading: both ends on the tape, a quarter of a division each. Physical: the"
                          + " tyre gives way over 2 mm at the top and stands on 4 mm.")));

  private static final Lines COMPARISON =
      new Lines(
          "Crank arm against the maker's length",
          "I",
          List.of(
              new Lines.Line("maker", "Maker's length (mm)", 172.5),
              new Lines.Line("tolerance", "Maker's tolerance (mm)", 0.2),
              new Lines.Line(
                  "agree",
                  "Do they agree?",
                  "=IF(COUNT({L.value},{L.uncertainty})<2,\"\","
                      + "LAB_AGREE({L.value},{L.uncertainty},{maker},{tolerance}))")));

  static final Lab LAB =
      new Lab(
          "lab-2-soft-ends",
          new WorkbookPlan(
              "Bicycle workshop, lab 2: lengths with soft ends",
              Lab.TASK,
              List.of(SheetPlan.of("Records", RECORDS, COMPARISON))));

  private SoftEndsLab() {}

  private static Row soft(
      String symbol, String quantity, double division, double near, double far) {
    return Records.length(symbol, quantity, "mm", division, "fine")
        .with(NEAR_EDGE, near)
        .with(FAR_EDGE, far)
        .with(PHYSICAL, "=IF(COUNT({near},{far})<2,\"\",LAB_FUZZY({near},{far}))")
        .shown("0.00");
  }
}
