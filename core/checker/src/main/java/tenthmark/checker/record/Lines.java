package tenthmark.checker.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * A sheet line by line, each line holding one record: its rows, or its columns where the records
 * stand side by side. A place is a cell's number within its line.
 */
final class Lines {

  private static final NavigableMap<Integer, Cell> EMPTY = new TreeMap<>();

  private final Sheet sheet;
  private final boolean columns;
  private final NavigableMap<Integer, NavigableMap<Integer, Cell>> cells = new TreeMap<>();

  private Lines(Sheet sheet, boolean columns) {
    this.sheet = sheet;
    this.columns = columns;
    sheet
        .cells()
        .forEach(
            cell ->
                cells
                    .computeIfAbsent(line(cell.address()), key -> new TreeMap<>())
                    .put(place(cell.address()), cell));
  }

  static Lines rows(Sheet sheet) {
    return new Lines(sheet, false);
  }

  static Lines columns(Sheet sheet) {
    return new Lines(sheet, true);
  }

  boolean areColumns() {
    return columns;
  }

  /** The numbers of the lines that hold something, in order. */
  Collection<Integer> numbers() {
    return cells.keySet();
  }

  /** The last line that holds something, or -1. */
  int last() {
    return cells.isEmpty() ? -1 : cells.lastKey();
  }

  /** The cells of a line. */
  List<Cell> cells(int line) {
    return List.copyOf(cells.getOrDefault(line, EMPTY).values());
  }

  /** The cells of a line from one place to another, both included. */
  List<Cell> cells(int line, int from, int to) {
    return List.copyOf(cells.getOrDefault(line, EMPTY).subMap(from, true, to, true).values());
  }

  /** The cells of a line, parted where cells between are empty. */
  List<List<Cell>> runs(int line) {
    List<List<Cell>> runs = new ArrayList<>();
    int next = -1;
    for (Cell cell : cells(line)) {
      if (runs.isEmpty() || place(cell.address()) != next) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(cell);
      next = place(cell.address()) + 1;
    }
    return runs;
  }

  int place(CellAddress address) {
    return columns ? address.row() : address.column();
  }

  private int line(CellAddress address) {
    return columns ? address.column() : address.row();
  }

  CellAddress address(int line, int place) {
    return columns
        ? new CellAddress(sheet.name(), line, place)
        : new CellAddress(sheet.name(), place, line);
  }

  /** The cells of a range as they lie here: lines from top to bottom, places left to right. */
  CellRange turned(CellRange range) {
    return columns
        ? new CellRange(
            range.sheet(),
            /* left= */ range.top(),
            /* top= */ range.left(),
            /* right= */ range.bottom(),
            /* bottom= */ range.right())
        : range;
  }

  /** The area over several places that a cell is merged into as its first, if it is. */
  Optional<CellRange> group(CellAddress address) {
    return sheet.merged().stream()
        .filter(area -> area.first().equals(address))
        .map(this::turned)
        .filter(area -> area.width() > 1)
        .findFirst();
  }
}
