package tenthmark.samples.classset;

import static tenthmark.samples.lab.RecordColumns.DIVISION;
import static tenthmark.samples.lab.RecordColumns.ENDS;
import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.PHYSICAL;
import static tenthmark.samples.lab.RecordColumns.QUANTITY;
import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.READING;
import static tenthmark.samples.lab.RecordColumns.RESULT;
import static tenthmark.samples.lab.RecordColumns.SPACING;
import static tenthmark.samples.lab.RecordColumns.SYMBOL;
import static tenthmark.samples.lab.RecordColumns.TIMING;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;
import static tenthmark.samples.lab.RecordColumns.UNIT;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import java.math.BigDecimal;
import java.util.List;
import tenthmark.samples.plan.Column;
import tenthmark.samples.plan.Row;

/**
 * The records of the session that the whole class did, as one student has them; every number is
 * invented.
 *
 * @param number of the student, from 1
 * @param method by which the student computes
 * @param columns that the student's tables have
 */
record BenchSession(int number, Method method, List<Column> columns) {

  List<Row> rows() {
    return List.of(
        length("L", "Crank arm, axle to pedal hole", stepped(172.0, 0.1, 7 * number % 10))
            .with(PHYSICAL, method.physical(0.2, 0.2))
            .with(UNCERTAINTY, method.total(0.7))
            .with(
                RATIONALE,
                "Reading: both ends on the steel rule, a quarter of a division each. Physical: the"
                    + " middle of each hole to 0.2 mm.")
            .shown("0.00"),
        length("G", "Foam grip, length", stepped(127.0, 0.5, number % 7))
            .with(PHYSICAL, method.physical(3, 2))
            .with(UNCERTAINTY, method.total(3))
            .with(
                RATIONALE,
                "Reading: both ends on the steel rule. Physical: the foam gives way over 3 mm and 2"
                    + " mm.")
            .shown("0.00"),
        scale("p", "Tyre pressure, front", "bar", new Scale(0.5, "wide", 1))
            .with(VALUE, stepped(4.0, 0.05, number % 9))
            .with(INSTRUMENT, 0.1)
            .with(UNCERTAINTY, method.total(0.15))
            .with(
                RATIONALE,
                "Reading: a tenth of a division of the dial gauge. Instrument: its maker states"
                    + " 0.1 bar.")
            .shown("0.000"),
        record("m", "Crank, mass", "g")
            .with(VALUE, stepped(214.2, 0.1, number % 11))
            .with(INSTRUMENT, method.display(0.1, 0.1, 2))
            .with(UNCERTAINTY, method.total(0.4))
            .with(RATIONALE, "Instrument: the balance's maker states 0.1 % and two counts.")
            .shown("0.000"),
        scale("V", "Crank, volume by overflow", "mL", new Scale(2, "wide", 1))
            .with(VALUE, stepped(78.8, 0.2, number % 6))
            .with(INSTRUMENT, 1)
            .with(UNCERTAINTY, method.total(1.2))
            .with(
                RATIONALE,
                "Reading: a tenth of a division of the measuring cylinder. Instrument: its maker"
                    + " states 1 mL.")
            .shown("0.0"),
        record("t", "Wheel, time of ten swings", "s")
            .with(VALUE, stepped(15.61, 0.03, 5 * number % 13))
            .with(TIMING, method.timing())
            .with(INSTRUMENT, 0.01)
            .with(UNCERTAINTY, method.total(0.21))
            .with(
                RATIONALE,
                "Timing: reaction at start and stop of the stopwatch. Instrument: its last digit.")
            .shown("0.00"),
        record("rho", "Crank, density", "g/cm^3")
            .with(VALUE, "={m.value}/{V.value}")
            .with(UNCERTAINTY, method.carried())
            .with(RATIONALE, "Carried from the mass and the volume.")
            .shown("0.000"));
  }

  private Row length(String symbol, String quantity, double value) {
    return scale(symbol, quantity, "mm", new Scale(1, "fine", 2)).with(VALUE, value);
  }

  private Row scale(String symbol, String quantity, String unit, Scale scale) {
    return record(symbol, quantity, unit)
        .with(DIVISION, scale.division())
        .with(SPACING, scale.spacing())
        .with(ENDS, scale.ends())
        .with(READING, method.reading(scale, columns.contains(DIVISION)));
  }

  private static Row record(String symbol, String quantity, String unit) {
    return Row.of(symbol)
        .with(QUANTITY, quantity)
        .with(SYMBOL, symbol)
        .with(UNIT, unit)
        .with(RESULT, "=LAB_RESULT({value},{uncertainty},{unit})");
  }

  /** In decimals, so that no bits beyond the last digit are typed in. */
  private static double stepped(double first, double step, int steps) {
    return BigDecimal.valueOf(step)
        .multiply(BigDecimal.valueOf(steps))
        .add(BigDecimal.valueOf(first))
        .doubleValue();
  }
}
