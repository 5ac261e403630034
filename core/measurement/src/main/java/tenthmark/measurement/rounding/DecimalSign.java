package tenthmark.measurement.rounding;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** The sign between the whole part of a number and its decimals. */
public enum DecimalSign {
  POINT("."),
  COMMA(",");

  private static final Pattern POINT_BETWEEN_DIGITS = Pattern.compile("(?<=\\d)\\.(?=\\d)");

  private final String sign;

  DecimalSign(String sign) {
    this.sign = sign;
  }

  /** The sign that a text names, a point if it is no comma. */
  public static DecimalSign of(String text) {
    return text.equals(",") ? COMMA : POINT;
  }

  /** A number in full, without a power of ten. */
  String write(BigDecimal number) {
    return write(number.toPlainString());
  }

  /** A text in which numbers have decimal points, with this sign instead. */
  public String write(String digits) {
    return this == POINT ? digits : POINT_BETWEEN_DIGITS.matcher(digits).replaceAll(sign);
  }
}
