package tenthmark.measurement.functions;

import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.wording.Sentences;

/** A result with one row per quantity: what it is, and its number. */
final class LabelledRows {

  private final Sentences sentences;
  private final List<List<Value>> rows = new ArrayList<>();

  LabelledRows(Sentences sentences) {
    this.sentences = sentences;
  }

  LabelledRows with(String label, double number) {
    return with(label, Value.of(number));
  }

  /**
   * Adds a row.
   *
   * @param label the part of its key after {@code label.}
   */
  LabelledRows with(String label, Value value) {
    rows.add(List.of(Value.of(sentences.say("label." + label)), value));
    return this;
  }

  Value.Table table() {
    return new Value.Table(rows);
  }
}
