package tenthmark.measurement.result;

import java.math.BigDecimal;
import java.util.Optional;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.rounding.PowerOfTen;

/**
 * A number that a cell holds as a text, because it was typed with another decimal sign than the
 * office's, with its unit, or into a cell for texts. No formula calculates with it.
 *
 * @param unit or whatever word stands behind the number; empty for none
 */
public record TextualNumber(BigDecimal number, String unit) {

  /** The number in a text that is nothing else than a number, or one with a unit of one word. */
  public static Optional<TextualNumber> in(String text) {
    return RecordText.readFinite(text)
        .filter(record -> record.uncertainty().isEmpty())
        .filter(record -> record.unit().indexOf(' ') < 0)
        .map(record -> new TextualNumber(record.value(), record.unit()));
  }

  /** How it is typed so that it is a number. */
  public String typed(DecimalSign sign) {
    return PowerOfTen.show(number, sign);
  }
}
