package tenthmark.checker.record;

import tenthmark.measurement.result.RecordText;

/**
 * A value with its uncertainty written as one text.
 *
 * @param field the part of the record where it stands
 * @param shown as it is written
 * @param text what it says; its uncertainty is present
 */
public record StatedResult(Field field, String shown, RecordText text) {

  /** Whether the uncertainty may be given in percent of the value. */
  public boolean isRelative() {
    return shown.contains("%");
  }
}
