package tenthmark.checker.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;

/** What a student read off the instruments: numbers that were typed in, not calculated. */
final class RawData {

  private RawData() {}

  /** So many numbers one below the other are a series of measurements. */
  private static final int SERIES = 3;

  /**
   * The typed-in numbers that the values and repeat contributions of the records are, or are
   * computed from, and those of series that are no part of a record, such as the points of a graph;
   * each cell once, sheet by sheet and row by row.
   */
  static List<Double> of(Inspection inspection) {
    List<String> sheets = inspection.workbook().sheets().stream().map(Sheet::name).toList();
    Comparator<Cell> order =
        Comparator.comparing((Cell cell) -> sheets.indexOf(cell.address().sheet()))
            .thenComparing(cell -> cell.address().row())
            .thenComparing(cell -> cell.address().column());
    Stream<Cell> ofRecords =
        inspection.records().stream()
            .flatMap(RawData::places)
            .flatMap(place -> inspection.evaluation().behind(place, Set.of()).stream());
    return Stream.concat(ofRecords, series(inspection))
        .collect(Collectors.toCollection(() -> new TreeSet<>(order)))
        .stream()
        .flatMap(cell -> typed(cell.content()).stream())
        .toList();
  }

  private static Stream<CellAddress> places(MeasurementRecord measurement) {
    return Stream.of(Field.VALUE, Field.REPEAT).flatMap(field -> measurement.place(field).stream());
  }

  private static Stream<Cell> series(Inspection inspection) {
    Set<CellAddress> parts = inspection.recordPlaces();
    List<Cell> typed =
        inspection
            .sheets()
            .flatMap(Sheet::cells)
            .filter(cell -> typed(cell.content()).isPresent())
            .toList();
    Set<CellAddress> places = typed.stream().map(Cell::address).collect(Collectors.toSet());
    return typed.stream()
        .filter(cell -> !parts.contains(cell.address()))
        .filter(cell -> isInSeries(cell.address(), places));
  }

  private static boolean isInSeries(CellAddress cell, Set<CellAddress> typed) {
    return IntStream.rangeClosed(Math.max(0, cell.row() - SERIES + 1), cell.row())
        .anyMatch(
            first ->
                IntStream.range(first, first + SERIES)
                    .mapToObj(row -> new CellAddress(cell.sheet(), cell.column(), row))
                    .allMatch(typed::contains));
  }

  private static Optional<Double> typed(Content content) {
    return content instanceof Content.Number number
        ? Optional.of(number.value())
        : Optional.empty();
  }
}
