package tenthmark.checker.rules;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordFinder;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.recording.Convention;

/**
 * A workbook as the rules see it.
 *
 * @param workbook what the file holds
 * @param evaluation its values, recalculated
 * @param tables its measurement records
 * @param course what the course expects
 */
public record Inspection(
    Workbook workbook, Evaluation evaluation, List<RecordTable> tables, Course course) {

  /** Recalculates a workbook and finds its records. */
  public static Inspection of(Workbook workbook, Catalogue catalogue, Course course) {
    Evaluation evaluation = Evaluation.of(workbook, catalogue);
    return new Inspection(
        workbook, evaluation, RecordFinder.find(workbook, evaluation, course.headings()), course);
  }

  /** The convention by which the course writes its measurements down. */
  Convention convention() {
    return course.convention();
  }

  /** All records. */
  public List<MeasurementRecord> records() {
    return tables.stream().flatMap(table -> table.records().stream()).toList();
  }

  /** The cells of all records' values. */
  Set<CellAddress> recordValues() {
    return records().stream()
        .flatMap(measurement -> measurement.place(Field.VALUE).stream())
        .collect(Collectors.toSet());
  }

  /** All cells with a formula. */
  Stream<Cell> formulas() {
    return workbook.sheets().stream()
        .flatMap(Sheet::cells)
        .filter(cell -> cell.content() instanceof Content.Formula);
  }
}
