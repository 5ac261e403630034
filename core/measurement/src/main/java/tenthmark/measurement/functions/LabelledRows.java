package tenthmark.measurement.functions;

import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.catalogue.Value;

/** A result with one row per quantity: what it is, and its number. */
final class LabelledRows {

  private final List<List<Value>> rows = new ArrayList<>();

  LabelledRows with(String label, double number) {
    return with(label, Value.of(number));
  }

  LabelledRows with(String label, Value value) {
    rows.add(List.of(Value.of(label), value));
    return this;
  }

  Value.Table table() {
    return new Value.Table(rows);
  }
}
