package tenthmark.measurement.catalogue;

import java.math.BigDecimal;
import tenthmark.measurement.rounding.Decimals;

/** Shows a double in its shortest decimal form, as a cell would. */
final class Numbers {

  private static final int LONGEST_PLAIN = 12;

  private Numbers() {}

  static String show(double number) {
    if (number == 0) {
      return "0";
    }
    if (!Double.isFinite(number)) {
      return "not a finite number";
    }
    BigDecimal decimal = Decimals.shortest(number);
    String plain = decimal.toPlainString();
    return plain.length() <= LONGEST_PLAIN ? plain : decimal.toString();
  }
}
