package tenthmark.checker.reading;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellAddress;

/**
 * What was read in a workbook.
 *
 * @param tables its measurement records
 * @param coverage what every number was taken for
 */
public record Reading(List<RecordTable> tables, Coverage coverage) {

  /** Copies the tables. */
  public Reading {
    tables = List.copyOf(tables);
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

  /** All records. */
  public List<MeasurementRecord> records() {
    return tables.stream().flatMap(table -> table.records().stream()).toList();
  }
}
