package tenthmark.checker.rules;

import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;

/** Values as findings show them. */
final class Values {

  private static final int DIGITS = 12;
  private static final int LONGEST = 60;

  private Values() {}

  static String show(Value value) {
    if (value instanceof Value.Numeric number) {
      return PowerOfTen.show(Decimals.shortest(number.number()), DIGITS);
    }
    if (value instanceof Value.Text text) {
      String whole = text.text();
      return "\"" + (whole.length() > LONGEST ? whole.substring(0, LONGEST) + "..." : whole) + "\"";
    }
    return value instanceof Value.Fault fault ? fault.reason() : "nothing";
  }
}
