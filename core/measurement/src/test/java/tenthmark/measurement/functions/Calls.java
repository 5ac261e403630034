package tenthmark.measurement.functions;

import java.util.Arrays;
import java.util.List;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Sentences;

/** Calls worksheet functions in tests as a cell would: numbers, texts, null for blank, ranges. */
final class Calls {

  private static final Catalogue CATALOGUE = Catalogue.load();

  private Calls() {}

  static Value call(String name, Object... arguments) {
    return callIn(Sentences.english(), name, arguments);
  }

  /** A call in another language. */
  static Value callIn(Sentences sentences, String name, Object... arguments) {
    return CATALOGUE
        .find(name)
        .orElseThrow()
        .call(
            Arrays.stream(arguments).map(Calls::value).toList(), sentences, () -> Convention.BENCH);
  }

  static double number(String name, Object... arguments) {
    Value result = call(name, arguments);
    if (result instanceof Value.Numeric numeric) {
      return numeric.number();
    }
    throw new AssertionError("not a number: " + result);
  }

  static String text(String name, Object... arguments) {
    Value result = call(name, arguments);
    if (result instanceof Value.Text text) {
      return text.text();
    }
    throw new AssertionError("not a text: " + result);
  }

  static String fault(String name, Object... arguments) {
    Value result = call(name, arguments);
    if (result instanceof Value.Fault fault) {
      return fault.reason();
    }
    throw new AssertionError("not a fault: " + result);
  }

  /** The sentence with which a function refuses an argument, wherever it shows it. */
  static String said(String name, Object... arguments) {
    Value result = call(name, arguments);
    if (result instanceof Value.Fault fault) {
      return fault.reason();
    }
    Value shown = result instanceof Value.Table table ? table.cells().get(0) : result;
    return ((Value.Text) shown).text();
  }

  /** A range of one column. */
  static Value column(Object... cells) {
    return new Value.Table(Arrays.stream(cells).map(cell -> List.of(value(cell))).toList());
  }

  /** One row of a table. */
  static List<Value> row(Object... cells) {
    return Arrays.stream(cells).map(Calls::value).toList();
  }

  @SafeVarargs
  @SuppressWarnings("varargs") // The rows are only read.
  static Value table(List<Value>... rows) {
    return new Value.Table(List.of(rows));
  }

  private static Value value(Object cell) {
    if (cell == null) {
      return Value.BLANK;
    }
    if (cell instanceof Value value) {
      return value;
    }
    return cell instanceof Number number ? Value.of(number.doubleValue()) : Value.of((String) cell);
  }
}
