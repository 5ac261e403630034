package tenthmark.samples.lab;

import static tenthmark.samples.lab.RecordColumns.COUNTS;
import static tenthmark.samples.lab.RecordColumns.DIVISION;
import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.PERCENT;
import static tenthmark.samples.lab.RecordColumns.QUANTITY;
import static tenthmark.samples.lab.RecordColumns.READING;
import static tenthmark.samples.lab.RecordColumns.RESOLUTION;
import static tenthmark.samples.lab.RecordColumns.RESULT;
import static tenthmark.samples.lab.RecordColumns.SPACING;
import static tenthmark.samples.lab.RecordColumns.SYMBOL;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;
import static tenthmark.samples.lab.RecordColumns.UNIT;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import tenthmark.samples.plan.Row;

/** Rows of tables of records. Each formula shows nothing as long as what it needs is blank. */
public final class Records {

  private Records() {}

  /** A record whose uncertainty is the total of its contributions. */
  static Row measured(String symbol, String quantity, String unit) {
    return named(totalled(symbol), symbol, quantity, unit);
  }

  /** The same, still without a name. */
  public static Row totalled(String key) {
    return stated(key)
        .with(UNCERTAINTY, "=IF(COUNT({contributions})=0,\"\",LAB_TOTAL({contributions}))");
  }

  /** One that is read off a scale, in one place. */
  static Row scale(String symbol, String quantity, String unit, double division, String spacing) {
    return measured(symbol, quantity, unit)
        .with(DIVISION, division)
        .with(SPACING, spacing)
        .with(READING, "=IF({division}=\"\",\"\",LAB_READING({division},{spacing}))");
  }

  /** One that is read off a scale at both ends. */
  static Row length(String symbol, String quantity, String unit, double division, String spacing) {
    return scale(symbol, quantity, unit, division, spacing)
        .with(RecordColumns.ENDS, 2)
        .with(READING, "=IF({division}=\"\",\"\",LAB_READING({division},{spacing},{ends}))");
  }

  /** One that is read off a display. */
  static Row display(
      String symbol, String quantity, String unit, double lastDigit, double percent, int counts) {
    return measured(symbol, quantity, unit)
        .with(RESOLUTION, lastDigit)
        .with(PERCENT, percent)
        .with(COUNTS, counts)
        .with(
            INSTRUMENT,
            "=IF(COUNT({value},{resolution})<2,\"\","
                + "LAB_DISPLAY({resolution},{value},{percent},{counts}))");
  }

  /** One whose value follows from others by a formula, once these cells hold numbers. */
  public static Row calculated(
      String symbol, String quantity, String unit, String inputs, int count, String formula) {
    return named(stated(symbol), symbol, quantity, unit)
        .with(VALUE, "=IF(COUNT(" + inputs + ")<" + count + ",\"\"," + formula + ")");
  }

  private static Row named(Row row, String symbol, String quantity, String unit) {
    return row.with(QUANTITY, quantity).with(SYMBOL, symbol).with(UNIT, unit);
  }

  private static Row stated(String key) {
    return Row.of(key)
        .with(
            RESULT,
            "=IF(COUNT({value},{uncertainty})<2,\"\",LAB_RESULT({value},{uncertainty},{unit}))");
  }
}
