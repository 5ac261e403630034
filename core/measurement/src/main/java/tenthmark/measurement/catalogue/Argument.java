package tenthmark.measurement.catalogue;

import java.util.List;

/**
 * One argument on its way to a function.
 *
 * @param name the parameter's name
 * @param value what the cell or range holds
 * @param allowed what is allowed, in words
 */
public record Argument(String name, Value value, String allowed) {

  /** The sentence that this argument is not allowed. */
  public ArgumentException refused() {
    return ArgumentException.notAllowed(name, inWords(value), allowed);
  }

  /** This argument as a rectangle of cells; a single value is one cell. */
  public Value.Table table() {
    if (value instanceof Value.Table table) {
      return table;
    }
    if (value instanceof Value.Reference) {
      throw refused();
    }
    return new Value.Table(List.of(List.of(value)));
  }

  /** One cell of this argument's range, counted from 0; refused by its place there. */
  public <T> T cell(int row, int column, Kind<T> each) {
    Value.Table table = table();
    String place =
        table.width() == 1 ? "row " + (row + 1) : "row " + (row + 1) + ", column " + (column + 1);
    return each.read(
        new Argument(name + " (" + place + ")", table.rows().get(row).get(column), each.allowed()));
  }

  /** A value as an error sentence shows it. */
  static String inWords(Value value) {
    if (value instanceof Value.Numeric numeric) {
      return Numbers.show(numeric.number());
    }
    if (value instanceof Value.Text text) {
      return "the text \"" + shortened(text.text()) + "\"";
    }
    if (value instanceof Value.Blank) {
      return "blank";
    }
    if (value instanceof Value.Fault fault) {
      return "the error " + fault.reason();
    }
    if (value instanceof Value.Table table) {
      return "a range of " + table.height() + " by " + table.width() + " cells";
    }
    return "a reference";
  }

  private static String shortened(String text) {
    return text.codePointCount(0, text.length()) <= 40
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 37)) + "...";
  }
}
