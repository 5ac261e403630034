package tenthmark.checker.record;

import java.math.BigDecimal;
import tenthmark.measurement.result.RecordText;

/**
 * A value with its uncertainty written as one text.
 *
 * @param field the part of the record where it stands
 * @param shown as it is written
 * @param text what it says; its uncertainty is present
 */
public record StatedResult(Field field, String shown, RecordText text) {

  /** The uncertainty without zeros that only hold its place: 2700 ± 90 states tens. */
  public BigDecimal uncertainty() {
    BigDecimal stated = text.uncertainty().orElseThrow();
    return stated.scale() == 0 ? stated.stripTrailingZeros() : stated;
  }

  /** Whether the uncertainty may be given in percent of the value. */
  public boolean isRelative() {
    return shown.contains("%");
  }
}
