package tenthmark.checker.reading;

import java.util.List;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Workbook;

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
    return new WorkbookReader(workbook, evaluation, course).read();
  }

  /** All records. */
  public List<MeasurementRecord> records() {
    return tables.stream().flatMap(table -> table.records().stream()).toList();
  }
}
