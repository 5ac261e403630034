package tenthmark.checker.record;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.result.RecordText;

/**
 * A number in a cell, with the unit if the cell states one.
 *
 * @param unit empty if the cell holds a bare number
 */
public record Amount(double number, String unit) {

  private static final Set<String> NOTHING =
      Set.of(
          "-",
          "–",
          "—",
          "none",
          "no",
          "nil",
          "n/a",
          "negligible",
          "keine",
          "keiner",
          "kein",
          "vernachlässigbar",
          "aucune",
          "aucun",
          "négligeable",
          "ninguna",
          "ninguno",
          "despreciable");

  /** The number that a value stands for: a number, or a text such as {@code 0,5 mm} or "none". */
  static Optional<Amount> of(Value value) {
    if (value instanceof Value.Numeric number) {
      return Optional.of(new Amount(number.number(), ""));
    }
    if (!(value instanceof Value.Text text)) {
      return Optional.empty();
    }
    if (NOTHING.contains(text.text().strip().toLowerCase(Locale.ROOT))) {
      return Optional.of(new Amount(0, ""));
    }
    return RecordText.readFinite(text.text())
        .map(record -> new Amount(record.value().doubleValue(), record.unit()));
  }
}
