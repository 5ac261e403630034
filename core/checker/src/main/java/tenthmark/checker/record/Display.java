package tenthmark.checker.record;

import java.util.stream.Stream;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.measurement.catalogue.FunctionRole;

/** Digital displays, which leave nothing to judge by eye. */
public final class Display {

  private Display() {}

  /** Whether a record says that it was read off one, in words, by a resolution or by a call. */
  public static boolean isRead(MeasurementRecord measurement) {
    boolean said =
        Stream.of(Field.QUANTITY, Field.INSTRUMENT, Field.APPARATUS)
            .flatMap(field -> measurement.text(field).stream())
            .anyMatch(text -> Vocabulary.STANDARD.mentions(Notion.DIGITAL, text));
    return said
        || measurement.number(Field.RESOLUTION).isPresent()
        || !measurement.calls(FunctionRole.INSTRUMENT).isEmpty();
  }
}
