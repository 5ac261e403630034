package tenthmark.measurement.catalogue;

import java.util.List;
import java.util.function.Supplier;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.ErrorName;
import tenthmark.measurement.wording.Message;

/**
 * One argument on its way to a function.
 *
 * @param name says the parameter's name, and the place in its range, where a sentence needs it
 * @param value what the cell or range holds
 * @param allowed what is allowed, in words
 */
public record Argument(Supplier<Message> name, Value value, Message allowed) {

  /** A whole argument. */
  public Argument(String name, Value value, Message allowed) {
    this(() -> Message.verbatim(name), value, allowed);
  }

  /** The sentence that this argument is not allowed. */
  public ArgumentException refused() {
    return refusedAs(inWords(value));
  }

  /** The sentence that this argument is not allowed, with other words for what it is. */
  public ArgumentException refusedAs(Message found) {
    return ArgumentException.notAllowed(name.get(), found, allowed);
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
    Supplier<Message> place =
        () ->
            table.width() == 1
                ? Message.of("argument.row", name.get(), row + 1)
                : Message.of("argument.cell", name.get(), row + 1, column + 1);
    return each.read(new Argument(place, table.rows().get(row).get(column), each.allowed()));
  }

  /** A range as an error sentence shows it. */
  public static Message inWords(CellRange range) {
    return range(range.height(), range.width());
  }

  /** A value as an error sentence shows it. */
  static Message inWords(Value value) {
    if (value instanceof Value.Numeric numeric) {
      return Numbers.inWords(numeric.number());
    }
    if (value instanceof Value.Text text) {
      return Message.of("found.text", shortened(text.text()));
    }
    if (value instanceof Value.Blank) {
      return Message.of("found.blank");
    }
    if (value instanceof Value.Fault fault) {
      return Message.of("found.error", new ErrorName(fault.reason()).shown());
    }
    if (value instanceof Value.Table table) {
      return inWords(table);
    }
    return Message.of("found.reference");
  }

  /** A table as an error sentence shows it. */
  public static Message inWords(Value.Table table) {
    return range(table.height(), table.width());
  }

  private static Message range(int height, int width) {
    return Message.of("found.range", height, width);
  }

  private static String shortened(String text) {
    return text.codePointCount(0, text.length()) <= 40
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 37)) + "...";
  }
}
