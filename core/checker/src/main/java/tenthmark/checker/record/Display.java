package tenthmark.checker.record;

import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Digital displays, which leave nothing to judge by eye. */
public final class Display {

  private static final Pattern DIGITAL =
      Pattern.compile(
          "\\b(?:digital(?:e[mnrs]?|es)?|digitalanzeige|numériques?)\\b",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);

  private Display() {}

  /** Whether a record says that it was read off one, in words, by a resolution or by a call. */
  public static boolean isRead(MeasurementRecord measurement) {
    boolean said =
        Stream.of(Field.QUANTITY, Field.INSTRUMENT, Field.APPARATUS)
            .flatMap(field -> measurement.text(field).stream())
            .anyMatch(text -> DIGITAL.matcher(text).find());
    return said
        || measurement.number(Field.RESOLUTION).isPresent()
        || !measurement.calls("LAB_DISPLAY").isEmpty();
  }
}
