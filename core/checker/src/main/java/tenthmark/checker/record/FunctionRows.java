package tenthmark.checker.record;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Call;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Records in rows without headings, told by LAB_RESULT with its value and its uncertainty in the
 * same row.
 */
final class FunctionRows {

  private static final Map<String, Field> BY_FUNCTION =
      Map.of(
          "LAB_READING", Field.READING,
          "LAB_FUZZY", Field.PHYSICAL,
          "LAB_DISPLAY", Field.INSTRUMENT,
          "LAB_HANDTIMED", Field.TIMING,
          "LAB_REPEATS", Field.REPEAT);

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final Sheet sheet;
  private final Lines lines;
  private final HeadingWords words;

  FunctionRows(
      Workbook workbook, Evaluation evaluation, Sheet sheet, Lines lines, HeadingWords words) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    this.sheet = sheet;
    this.lines = lines;
    this.words = words;
  }

  Optional<MeasurementRecord> read(int row) {
    Map<Field, CellAddress> places = new EnumMap<>(Field.class);
    for (Cell cell : sheet.row(row)) {
      for (Call call : evaluation.calls(cell)) {
        if (call.function().equals("LAB_RESULT")) {
          places.put(Field.RESULT, cell.address());
          place(call, 0, row).ifPresent(place -> places.put(Field.VALUE, place));
          place(call, 1, row).ifPresent(place -> places.put(Field.UNCERTAINTY, place));
          place(call, 2, row).ifPresent(place -> places.put(Field.UNIT, place));
        }
      }
    }
    if (!isFilledIn(places.get(Field.VALUE)) || !places.containsKey(Field.UNCERTAINTY)) {
      return Optional.empty();
    }
    contributions(row, places);
    int left = places.values().stream().mapToInt(CellAddress::column).min().orElse(0);
    int right = places.values().stream().mapToInt(CellAddress::column).max().orElse(0);
    Optional<Rationale> rationale =
        new RationaleRows(evaluation, lines, words, left, right).at(row + 1);
    return Optional.of(
        new MeasurementRecord(
            workbook, evaluation, places, Map.of(), List.copyOf(sheet.row(row)), rationale));
  }

  private boolean isFilledIn(CellAddress value) {
    return value != null
        && !(evaluation.at(value) instanceof Outcome.Known known
            && known.value() instanceof Value.Blank);
  }

  /** Contributions are told by their functions, if those make up the whole total. */
  private void contributions(int row, Map<Field, CellAddress> places) {
    Map<Field, CellAddress> found = new EnumMap<>(Field.class);
    for (Cell cell : sheet.row(row)) {
      field(cell).ifPresent(field -> found.putIfAbsent(field, cell.address()));
    }
    if (totalled(places.get(Field.UNCERTAINTY)).filter(found.values()::containsAll).isPresent()) {
      found.forEach(places::putIfAbsent);
    }
  }

  private Optional<Field> field(Cell cell) {
    return evaluation.calls(cell).stream()
        .flatMap(call -> Stream.ofNullable(BY_FUNCTION.get(call.function())))
        .findFirst();
  }

  /** The cells with content that LAB_TOTAL adds up in a cell. */
  private Optional<List<CellAddress>> totalled(CellAddress place) {
    return workbook.at(place).stream()
        .flatMap(cell -> evaluation.calls(cell).stream())
        .filter(call -> call.function().equals("LAB_TOTAL"))
        .flatMap(call -> call.argument(0).flatMap(Call.Argument::range).stream())
        .map(range -> sheet.cells(range).map(Cell::address).toList())
        .findFirst();
  }

  private static Optional<CellAddress> place(Call call, int index, int row) {
    return call.argument(index)
        .flatMap(Call.Argument::range)
        .filter(range -> range.height() == 1 && range.width() == 1)
        .map(CellRange::first)
        .filter(address -> address.row() == row);
  }
}
