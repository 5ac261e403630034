package tenthmark.samples.lab;

import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import java.util.List;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;
import tenthmark.samples.plan.WorkbookPlan;

/** Reading scales and displays. */
final class ReadingsLab {

  private static final Table RECORDS =
      new Table(
          "records",
          "Records",
          RecordColumns.SCALES_AND_DISPLAYS,
          List.of(
              Records.scale("p1", "Tyre pressure, dial gauge", "bar", 0.5, "wide")
                  .with(VALUE, 4.15)
                  .with(INSTRUMENT, 0.1)
                  .with(
                      RATIONALE,
                      "Reading: a tenth of a division, the marks are wide apart. Instrument: the"
                          + " dial gauge's maker states 0.1 bar.")
                  .shown("0.000"),
              Records.display("p2", "Tyre pressure, digital gauge", "bar", 0.01, 1, 2)
                  .with(VALUE, 4.13)
                  .with(
                      RATIONALE,
                      "Instrument: the digital gauge's maker states 1 % and two counts. Nothing is"
                          + " judged on a display.")
                  .shown("0.0000"),
              Records.display("m", "Crank arm, mass", "g", 1, 0.2, 2)
                  .with(VALUE, 642)
                  .with(RATIONALE, "Instrument: the balance's maker states 0.2 % and two counts.")
                  .shown("0.000"),
              Records.scale("theta", "Workshop temperature", "°C", 1, "fine")
                  .with(VALUE, 19.4)
                  .with(INSTRUMENT, 0.5)
                  .with(
                      RATIONALE,
                      "Reading: a quarter of a division, the marks are close. Instrument: the"
                          + " thermometer's maker states 0.5 °C.")
                  .shown("0.00")));

  static final Lab LAB =
      new Lab(
          "lab-1-readings",
          new WorkbookPlan(
              "Bicycle workshop, lab 1: scale and display readings",
              Lab.TASK,
              List.of(SheetPlan.of("Records", RECORDS))));

  private ReadingsLab() {}
}
