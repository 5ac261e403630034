package tenthmark.checker.reading;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellAddress;

/** What was read in a workbook: its measurement records, and what every number was taken for. */
public final class Reading {

  private final List<RecordTable> tables;
  private final Coverage coverage;
  private final List<MeasurementRecord> records;
  private final Set<CellAddress> values;

  Reading(List<RecordTable> tables, Coverage coverage) {
    this.tables = List.copyOf(tables);
    this.coverage = coverage;
    this.records = tables.stream().flatMap(table -> table.records().stream()).toList();
    this.values =
        records.stream()
            .flatMap(measurement -> measurement.place(Field.VALUE).stream())
            .collect(Collectors.toUnmodifiableSet());
  }

  /** Reads a recalculated workbook. */
  public static Reading of(Workbook workbook, Evaluation evaluation, Course course) {
    return new WorkbookReader(withoutCourse(workbook, evaluation), evaluation, course).read();
  }

  /** What a course says in the workbook is nothing that was measured. */
  private static Workbook withoutCourse(Workbook workbook, Evaluation evaluation) {
    Map<CellAddress, Optional<Content>> blank = new HashMap<>();
    Stream.of(evaluation.conventionCells(), InsideProfile.cells(evaluation))
        .flatMap(Optional::stream)
        .flatMap(
            range ->
                workbook.sheet(range.sheet()).stream()
                    .flatMap(Sheet::cells)
                    .map(Cell::address)
                    .filter(range::contains))
        .forEach(cell -> blank.put(cell, Optional.empty()));
    return blank.isEmpty() ? workbook : workbook.with(blank);
  }

  /** The records by the tables in which they stand. */
  public List<RecordTable> tables() {
    return tables;
  }

  /** What every number was taken for. */
  public Coverage coverage() {
    return coverage;
  }

  /** All records. */
  public List<MeasurementRecord> records() {
    return records;
  }

  /** The cells of all records' values. */
  public Set<CellAddress> values() {
    return values;
  }
}
