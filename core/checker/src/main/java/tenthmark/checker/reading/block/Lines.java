package tenthmark.checker.reading.block;

import java.util.Collections;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * A block line by line: its rows, or its columns where records stand side by side. A place is a
 * cell's number within its line.
 */
public final class Lines {

  private static final NavigableMap<Integer, TypedCell> EMPTY = Collections.emptyNavigableMap();

  private final Block block;
  private final Direction direction;
  private final NavigableMap<Integer, NavigableMap<Integer, TypedCell>> lines = new TreeMap<>();

  Lines(Block block, Direction direction) {
    this.block = block;
    this.direction = direction;
    for (TypedCell cell : block.cells()) {
      lines
          .computeIfAbsent(direction.line(cell.address()), line -> new TreeMap<>())
          .put(direction.place(cell.address()), cell);
    }
  }

  /** Rows or columns. */
  public Direction direction() {
    return direction;
  }

  /** The block. */
  public Block block() {
    return block;
  }

  /** The lines that hold something, by number. */
  public NavigableMap<Integer, NavigableMap<Integer, TypedCell>> all() {
    return Collections.unmodifiableNavigableMap(lines);
  }

  /** The cells of a line by place. */
  public NavigableMap<Integer, TypedCell> line(int line) {
    return lines.getOrDefault(line, EMPTY);
  }

  /** The cell at a place of a line. */
  public Optional<TypedCell> at(int line, int place) {
    return Optional.ofNullable(line(line).get(place));
  }

  /** The address of a place of a line. */
  public CellAddress address(int line, int place) {
    return direction.address(block.sheet().name(), line, place);
  }

  /** How many places a cell covers, more than one if it is merged across them. */
  public int covers(TypedCell cell) {
    return block
        .sheet()
        .mergedFrom(cell.address())
        .map(direction::turned)
        .map(CellRange::width)
        .orElse(1);
  }

  /** How many lines a cell covers. */
  public int deep(TypedCell cell) {
    return block
        .sheet()
        .mergedFrom(cell.address())
        .map(direction::turned)
        .map(CellRange::height)
        .orElse(1);
  }
}
