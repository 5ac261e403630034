package tenthmark.checker.reading.block;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.NumberFormat;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** A sheet's cells by what their values are; those that show nothing are left out. */
public final class TypedSheet {

  private static final NavigableMap<Integer, TypedCell> EMPTY = Collections.emptyNavigableMap();

  private final Sheet sheet;
  private final NavigableMap<Integer, NavigableMap<Integer, TypedCell>> rows = new TreeMap<>();
  private final Map<CellAddress, CellRange> merged = new HashMap<>();

  /** The cells of a sheet as they were recalculated. */
  public TypedSheet(Sheet sheet, Evaluation evaluation) {
    this.sheet = sheet;
    sheet.cells().forEach(cell -> typed(cell, evaluation).ifPresent(this::put));
    sheet.merged().forEach(area -> merged.put(area.first(), area));
  }

  private void put(TypedCell cell) {
    rows.computeIfAbsent(cell.address().row(), row -> new TreeMap<>())
        .put(cell.address().column(), cell);
  }

  private static Optional<TypedCell> typed(Cell cell, Evaluation evaluation) {
    if (!(evaluation.at(cell.address()) instanceof Outcome.Known known)) {
      return Optional.of(new TypedCell(cell, TypedCell.Kind.UNKNOWN, "", Double.NaN));
    }
    Value value = known.value();
    if (value instanceof Value.Numeric number) {
      return Optional.of(new TypedCell(cell, TypedCell.Kind.NUMBER, "", number.number()));
    }
    if (value instanceof Value.Text text) {
      return text.text().isBlank()
          ? Optional.empty()
          : Optional.of(new TypedCell(cell, TypedCell.Kind.TEXT, text.text().strip(), Double.NaN));
    }
    return value instanceof Value.Blank
        ? Optional.empty()
        : Optional.of(new TypedCell(cell, TypedCell.Kind.UNKNOWN, "", Double.NaN));
  }

  /** The sheet's name. */
  public String name() {
    return sheet.name();
  }

  /** The cell at a place, if it shows something. */
  public Optional<TypedCell> at(int column, int row) {
    return Optional.ofNullable(rows.getOrDefault(row, EMPTY).get(column));
  }

  /** What a person sees of a number besides its digits. */
  public NumberFormat format(CellAddress cell) {
    return sheet.format(cell);
  }

  /** The numbers of the rows that show something. */
  public Collection<Integer> rows() {
    return rows.keySet();
  }

  /** The cells of a row by column. */
  public NavigableMap<Integer, TypedCell> row(int row) {
    return rows.getOrDefault(row, EMPTY);
  }

  /** All cells, row by row. */
  public List<TypedCell> cells() {
    return rows.values().stream().flatMap(row -> row.values().stream()).toList();
  }

  /** The area that a cell is merged into as its first, if it is. */
  public Optional<CellRange> mergedFrom(CellAddress first) {
    return Optional.ofNullable(merged.get(first));
  }
}
