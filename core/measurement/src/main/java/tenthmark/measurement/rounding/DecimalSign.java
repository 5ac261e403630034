package tenthmark.measurement.rounding;

import java.math.BigDecimal;

/** The sign between the whole part of a number and its decimals. */
public enum DecimalSign {
  POINT('.'),
  COMMA(',');

  private final char character;

  DecimalSign(char character) {
    this.character = character;
  }

  /** The sign that a text names, a point if it is no comma. */
  public static DecimalSign of(String text) {
    return text.equals(",") ? COMMA : POINT;
  }

  /** A number in full, without a power of ten. */
  String write(BigDecimal number) {
    return number.toPlainString().replace('.', character);
  }
}
