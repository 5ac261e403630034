package tenthmark.measurement.catalogue;

import java.math.BigDecimal;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.wording.Message;

/** Shows a double in its shortest decimal form, as a cell would. */
final class Numbers {

  private static final int LONGEST_PLAIN = 12;

  private Numbers() {}

  /** A number as an error sentence shows it. */
  static Message inWords(double number) {
    return Double.isFinite(number)
        ? Message.verbatim(new Message.Figure(show(number)))
        : Message.of("found.infinite");
  }

  /** A finite number. */
  static String show(double number) {
    if (number == 0) {
      return "0";
    }
    BigDecimal decimal = Decimals.shortest(number);
    String plain = decimal.toPlainString();
    return plain.length() <= LONGEST_PLAIN ? plain : decimal.toString();
  }
}
