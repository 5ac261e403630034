package tenthmark.checker.workbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** A sheet: its cells that hold something, its merged areas, and what is noted on it. */
public final class Sheet {

  /**
   * How the comments of an annotated copy begin, which are none of the student's; their author is
   * the same, but programs may lose it.
   */
  public static final String CHECKER = "Tenthmark checker";

  private static final NavigableMap<Integer, Cell> EMPTY_ROW =
      Collections.unmodifiableNavigableMap(new TreeMap<>());

  private final String name;
  private final boolean hidden;
  private final NavigableMap<Integer, NavigableMap<Integer, Cell>> rows;
  private final List<CellRange> merged;
  private final Map<CellAddress, String> comments;
  private final List<TextBox> boxes;
  private final Map<CellAddress, NumberFormat> formats;

  private Sheet(Builder builder) {
    this.name = builder.name;
    this.hidden = builder.hidden;
    this.rows = builder.rows;
    this.merged = List.copyOf(builder.merged);
    this.comments = Collections.unmodifiableMap(new LinkedHashMap<>(builder.comments));
    this.boxes = List.copyOf(builder.boxes);
    this.formats = Map.copyOf(builder.formats);
  }

  /** The same sheet with other contents in those of some cells that lie on it. */
  Sheet with(Map<CellAddress, Optional<Content>> contents) {
    Builder other = new Builder(name);
    other.hidden = hidden;
    other.merged.addAll(merged);
    other.comments.putAll(comments);
    other.boxes.addAll(boxes);
    other.formats.putAll(formats);
    cells().filter(cell -> !contents.containsKey(cell.address())).forEach(other::put);
    contents.forEach(
        (cell, content) -> {
          if (cell.sheet().equalsIgnoreCase(name)) {
            content.ifPresent(held -> other.put(cell.column(), cell.row(), held));
          }
        });
    return other.build();
  }

  /** The sheet's name. */
  public String name() {
    return name;
  }

  /** Whether the sheet is hidden from the user. */
  public boolean hidden() {
    return hidden;
  }

  /** The cell in a column and a row, counted from 0, if it holds something. */
  public Optional<Cell> at(int column, int row) {
    return Optional.ofNullable(rows.getOrDefault(row, EMPTY_ROW).get(column));
  }

  /** The row numbers that hold something, in order. */
  public Collection<Integer> rows() {
    return Collections.unmodifiableSet(rows.navigableKeySet());
  }

  /** The cells of a row, left to right. */
  public Collection<Cell> row(int row) {
    return Collections.unmodifiableCollection(rows.getOrDefault(row, EMPTY_ROW).values());
  }

  /** All cells, row by row. */
  public Stream<Cell> cells() {
    return rows.values().stream().flatMap(row -> row.values().stream());
  }

  /** The cells within an area, row by row. */
  public Stream<Cell> cells(CellRange area) {
    return between(area.top(), area.bottom(), rows).stream()
        .flatMap(row -> between(area.left(), area.right(), row).stream());
  }

  private static <T> Collection<T> between(int first, int last, NavigableMap<Integer, T> all) {
    if (first == last) {
      T only = all.get(first);
      return only == null ? List.of() : List.of(only);
    }
    return all.subMap(first, true, last, true).values();
  }

  /** The cells within an area, row by row, one at a time. */
  public Iterator<Cell> cellsIn(CellRange area) {
    if (area.bottom() < area.top() || area.right() < area.left()) {
      return Collections.emptyIterator();
    }
    Iterator<NavigableMap<Integer, Cell>> lines =
        between(area.top(), area.bottom(), rows).iterator();
    return new Iterator<>() {
      private Iterator<Cell> line = Collections.emptyIterator();

      @Override
      public boolean hasNext() {
        while (!line.hasNext() && lines.hasNext()) {
          line = between(area.left(), area.right(), lines.next()).iterator();
        }
        return line.hasNext();
      }

      @Override
      public Cell next() {
        if (!hasNext()) {
          throw new NoSuchElementException();
        }
        return line.next();
      }
    };
  }

  /** The last row that holds something, or -1. */
  public int lastRow() {
    return rows.isEmpty() ? -1 : rows.lastKey();
  }

  /** What a person sees of a number besides its digits. */
  public NumberFormat format(CellAddress cell) {
    return formats.getOrDefault(cell, NumberFormat.PLAIN);
  }

  /** The merged areas. */
  public List<CellRange> merged() {
    return merged;
  }

  /** The comments on cells. */
  public Map<CellAddress, String> comments() {
    return comments;
  }

  /** The texts that lie on the sheet. */
  public List<TextBox> boxes() {
    return boxes;
  }

  /** Collects the cells of a sheet while a file is read. */
  static final class Builder {

    private final String name;
    private final NavigableMap<Integer, NavigableMap<Integer, Cell>> rows = new TreeMap<>();
    private final List<CellRange> merged = new ArrayList<>();
    private final Map<CellAddress, String> comments = new LinkedHashMap<>();
    private final List<TextBox> boxes = new ArrayList<>();
    private final Map<CellAddress, NumberFormat> formats = new HashMap<>();
    private boolean hidden;

    Builder(String name) {
      this.name = name;
    }

    void hide() {
      hidden = true;
    }

    void put(int column, int row, Content content) {
      CellAddress address = new CellAddress(name, column, row);
      rows.computeIfAbsent(row, key -> new TreeMap<>()).put(column, new Cell(address, content));
    }

    private void put(Cell cell) {
      put(cell.address().column(), cell.address().row(), cell.content());
    }

    void format(int column, int row, NumberFormat format) {
      if (!format.equals(NumberFormat.PLAIN)) {
        formats.put(new CellAddress(name, column, row), format);
      }
    }

    Optional<Content> at(int column, int row) {
      return Optional.ofNullable(rows.getOrDefault(row, EMPTY_ROW).get(column)).map(Cell::content);
    }

    /** A file gives an array formula once; the other cells that it fills hold only their values. */
    void spread(CellRange array, Tally tally) throws UnreadableFileException {
      tally.require((long) array.height() * array.width());
      if (at(array.left(), array.top()).orElse(null) instanceof Content.Formula formula) {
        for (int row = array.top(); row <= array.bottom(); row++) {
          for (int column = array.left(); column <= array.right(); column++) {
            Optional<Content> stored =
                row == array.top() && column == array.left() ? formula.stored() : at(column, row);
            Content spread =
                new Content.Formula(formula.written(), formula.text(), stored, formula.array());
            tally.cell(spread);
            put(column, row, spread);
          }
        }
      }
    }

    /**
     * Adds a comment without the name of its author, with which some programs begin it; several on
     * one cell are joined.
     */
    void comment(int column, int row, String author, String text) {
      String signed = author + ":";
      String said = text.startsWith(signed) ? text.substring(signed.length()) : text;
      if (!said.isBlank() && !text.startsWith(CHECKER)) {
        comments.merge(new CellAddress(name, column, row), said.strip(), (a, b) -> a + "\n" + b);
      }
    }

    /** Adds a text that lies on a cell. */
    void box(int column, int row, String text) {
      if (!text.isBlank()) {
        boxes.add(new TextBox(new CellAddress(name, column, row), text.strip()));
      }
    }

    void merge(CellRange area) {
      merged.add(area);
    }

    Sheet build() {
      return new Sheet(this);
    }
  }
}
