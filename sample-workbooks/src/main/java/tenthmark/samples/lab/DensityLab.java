package tenthmark.samples.lab;

import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import java.util.List;
import tenthmark.samples.plan.Lines;
import tenthmark.samples.plan.Matrix;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;
import tenthmark.samples.plan.WorkbookPlan;

/** The density of an aluminium crank from its mass and the water that it displaces. */
final class DensityLab {

  private static final String INPUTS = "{m.value}:{V2.value}";
  private static final String UNCERTAINTIES = "{m.uncertainty}:{V2.uncertainty}";

  private static final Table RECORDS =
      new Table(
          "records",
          "Records",
          RecordColumns.SCALES_AND_DISPLAYS,
          List.of(
              Records.display("m", "Crank, mass", "g", 0.1, 0.1, 2)
                  .with(VALUE, 214.6)
                  .with(RATIONALE, "Instrument: the balance's maker states 0.1 % and two counts.")
                  .shown("0.000"),
              level("V1", "Water level without the crank", 120.0),
              level("V2", "Water level with the crank", 199.4),
              Records.calculated(
                      "V",
                      "Crank, volume",
                      "cm^3",
                      "{V1.value}:{V2.value}",
                      2,
                      "{V2.value}-{V1.value}")
                  .with(UNCERTAINTY, carried("{V1.value}:{V2.value}"))
                  .shown("0.0"),
              Records.calculated(
                      "rho",
                      "Crank, density",
                      "g/cm^3",
                      "{m.value},{V.value}",
                      2,
                      "{m.value}/{V.value}")
                  .with(UNCERTAINTY, carried(INPUTS))
                  .shown("0.000"),
              Records.calculated(
                      "rhoSI",
                      "Crank, density in kilograms and metres",
                      "kg/m^3",
                      "{rho.value}",
                      1,
                      "({m.value}/1000)/({V.value}/1000000)")
                  .with(UNCERTAINTY, carried(INPUTS))
                  .shown("0")));

  private static final Lines COMPARISON =
      new Lines(
          "Crank against aluminium",
          "I",
          List.of(
              new Lines.Line("aluminium", "Aluminium (g/cm^3)", 2.7),
              new Lines.Line("alloys", "Its alloys, up to (g/cm^3)", 0.1),
              new Lines.Line(
                  "agree",
                  "Do they agree?",
                  "=IF(COUNT({rho.value},{rho.uncertainty})<2,\"\","
                      + "LAB_AGREE({rho.value},{rho.uncertainty},{aluminium},{alloys}))")));

  private static final Matrix SHARES =
      new Matrix(
          "shares",
          "Where the uncertainty of the density comes from",
          List.of("Input", "Value", "Uncertainty", "Sensitivity", "Contribution", "Share"),
          "=IF(COUNT({rho.uncertainty})=1,LAB_CARRYTABLE({rho.value},"
              + INPUTS
              + ","
              + UNCERTAINTIES
              + "),\"\")",
          4,
          "0.0000");

  static final Lab LAB =
      new Lab(
          "lab-4-density",
          new WorkbookPlan(
              "Bicycle workshop, lab 4: density of an aluminium crank",
              Lab.TASK,
              List.of(
                  SheetPlan.of("Records", RECORDS, COMPARISON),
                  new SheetPlan("Shares", List.of(28, 14, 14, 14, 14, 14), List.of(SHARES)))));

  private DensityLab() {}

  private static Row level(String symbol, String quantity, double value) {
    return Records.scale(symbol, quantity, "mL", 2, "wide")
        .with(VALUE, value)
        .with(INSTRUMENT, 1)
        .with(
            RATIONALE,
            "Reading: a tenth of a division of the measuring cylinder. Instrument: its maker states"
                + " 1 mL.")
        .shown("0.0");
  }

  private static String carried(String inputs) {
    return "=IF({value}=\"\",\"\",LAB_CARRY({value},"
        + inputs
        + ","
        + inputs.replace(".value", ".uncertainty")
        + "))";
  }
}
