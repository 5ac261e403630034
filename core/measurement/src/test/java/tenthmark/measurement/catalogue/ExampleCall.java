package tenthmark.measurement.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs the call of an example: literals, numbers, left-out arguments, cells and ranges. */
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
    return catalogue
        .find(function)
        .orElseThrow()
        .call(arguments.stream().map(this::value).toList());
  }

  private Value value(String argument) {
    if (argument.startsWith("\"")) {
      return Value.of(argument.substring(1, argument.length() - 1));
    }
    if (argument.isEmpty()) {
      return Value.BLANK;
    }
    Matcher range = CELLS.matcher(argument);
    return range.matches() ? range(range) : Value.of(Double.parseDouble(argument));
  }

  private Value range(Matcher range) {
    int left = range.group(1).charAt(0) - 'A';
    int top = Integer.parseInt(range.group(2)) - 1;
    if (range.group(3) == null) {
      return cells.get(top).get(left);
    }
    int right = range.group(3).charAt(0) - 'A';
    int bottom = Integer.parseInt(range.group(4)) - 1;
    return new Value.Table(
        cells.subList(top, bottom + 1).stream().map(row -> row.subList(left, right + 1)).toList());
  }
}
