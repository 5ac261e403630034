package tenthmark.measurement.catalogue;

import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.formula.CellBlock;

/** What a worksheet function takes from cells and gives back to them, free of any office type. */
public sealed interface Value {

  /** The value of an empty cell, of a zero-length text and of an argument that was left out. */
  Value BLANK = new Blank();

  /** A finite number; a date or a logical value arrives as its number too. */
  record Numeric(double number) implements Value {}

  /** A text that is not empty. */
  record Text(String text) implements Value {}

  /** Nothing: an empty cell or an argument that was left out. */
  record Blank() implements Value {}

  /** A cell error. As an argument its reason is the error's name, as a result a plain sentence. */
  record Fault(String reason) implements Value {}

  /** A rectangle of single values, by rows; never empty and never nested. */
  record Table(List<List<Value>> rows) implements Value {

    /** Copies the rows and checks that they form a rectangle. */
    public Table {
      rows = rows.stream().map(List::copyOf).toList();
      if (rows.isEmpty() || rows.get(0).isEmpty()) {
        throw new IllegalArgumentException("a table has at least one row and one column");
      }
      int width = rows.get(0).size();
      if (rows.stream().anyMatch(row -> row.size() != width)) {
        throw new IllegalArgumentException("the rows of a table are equally long");
      }
    }

    /** Number of rows, at least 1. */
    public int height() {
      return rows.size();
    }

    /** Number of columns, at least 1. */
    public int width() {
      return rows.get(0).size();
    }

    /** The cells row by row, left to right. */
    public List<Value> cells() {
      List<Value> cells = new ArrayList<>(height() * width());
      rows.forEach(cells::addAll);
      return cells;
    }
  }

  /** The cells themselves rather than their values, so that their formulas can be read. */
  record Reference(CellBlock block) implements Value {}

  /** A single number as a value. */
  static Value of(double number) {
    return new Numeric(number);
  }

  /** A text as a value; an empty text is blank. */
  static Value of(String text) {
    return text.isEmpty() ? BLANK : new Text(text);
  }
}
