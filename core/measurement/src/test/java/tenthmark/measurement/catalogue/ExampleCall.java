package tenthmark.measurement.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Grid;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Sentences;

/**
 * Runs the call of an example: literals, numbers, left-out arguments, cells, ranges and references.
 */
record ExampleCall(String function, List<String> arguments, List<List<Value>> cells) {

  private static final Pattern CALL = Pattern.compile("=(\\w+)\\((.*)\\)", Pattern.DOTALL);
  private static final Pattern ARGUMENT = Pattern.compile("((?:\"[^\"]*\"|[^;\"])*)(;|$)");
  private static final Pattern CELLS = Pattern.compile("([A-Z])(\\d+)(?::([A-Z])(\\d+))?");

  static ExampleCall of(Example example) {
    Matcher call = CALL.matcher(example.formula());
    if (!call.matches()) {
      throw new IllegalArgumentException("not a call: " + example.formula());
    }
    List<String> arguments = new ArrayList<>();
    Matcher argument = ARGUMENT.matcher(call.group(2));
    while (argument.lookingAt()) {
      arguments.add(argument.group(1).strip());
      if (argument.group(2).isEmpty()) {
        break;
      }
      argument.region(argument.end(), call.group(2).length());
    }
    return new ExampleCall(call.group(1), arguments, example.cells());
  }

  Value run(Catalogue catalogue) {
    return run(catalogue, Sentences.english());
  }

  /** What the call gives in an office that writes these sentences. */
  Value run(Catalogue catalogue, Sentences sentences) {
    WorksheetFunction called = catalogue.find(function).orElseThrow();
    List<Parameter<?>> parameters = called.declaration().parameters();
    List<Value> values = new ArrayList<>();
    for (int i = 0; i < arguments.size(); i++) {
      Parameter<?> parameter = parameters.get(Math.min(i, parameters.size() - 1));
      values.add(value(arguments.get(i), parameter.form()));
    }
    return called.call(values, sentences, () -> Convention.BENCH);
  }

  private Value value(String argument, Kind.Form form) {
    if (argument.startsWith("\"")) {
      return Value.of(argument.substring(1, argument.length() - 1));
    }
    if (argument.isEmpty()) {
      return Value.BLANK;
    }
    Matcher range = CELLS.matcher(argument);
    if (!range.matches()) {
      return Value.of(Double.parseDouble(argument.replace(',', '.')));
    }
    CellRange place = place(range);
    return form == Kind.Form.REFERENCE
        ? new Value.Reference(new CellBlock(place, document()))
        : new Value.Table(values(place));
  }

  private static CellRange place(Matcher range) {
    int left = range.group(1).charAt(0) - 'A';
    int top = Integer.parseInt(range.group(2)) - 1;
    boolean single = range.group(3) == null;
    int right = single ? left : range.group(3).charAt(0) - 'A';
    int bottom = single ? top : Integer.parseInt(range.group(4)) - 1;
    return new CellRange(Grid.SHEET, left, top, right, bottom);
  }

  private List<List<Value>> values(CellRange place) {
    return cells.subList(place.top(), place.bottom() + 1).stream()
        .map(row -> row.subList(place.left(), place.right() + 1))
        .toList();
  }

  /** The cells as a document; a text that begins with an equals sign is a formula. */
  Grid document() {
    Grid grid = new Grid();
    for (int row = 0; row < cells.size(); row++) {
      for (int column = 0; column < cells.get(row).size(); column++) {
        String address = new CellAddress(Grid.SHEET, column, row).place();
        Value value = cells.get(row).get(column);
        if (value instanceof Value.Numeric numeric) {
          grid.put(address, numeric.number());
        } else if (value instanceof Value.Text text) {
          grid.put(address, text.text());
        }
      }
    }
    return grid;
  }
}
