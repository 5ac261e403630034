package tenthmark.checker.reading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * What was read in a workbook.
 *
 * @param tables its measurement records
 * @param coverage what every number was taken for
 */
public record Reading(List<RecordTable> tables, Coverage coverage) {

  private static final Taken UNKNOWN = new Taken.NotRead(Message.of("reading.number"));
  private static final Taken CALCULATED = new Taken.Other(NumberRole.CALCULATED);

  /** Copies the tables. */
  public Reading {
    tables = List.copyOf(tables);
  }

  /** Reads a recalculated workbook. */
  public static Reading of(Workbook workbook, Evaluation evaluation, Course course) {
    List<RecordTable> tables = RecordFinder.find(workbook, evaluation, course.headings());
    return new Reading(tables, coverage(workbook, evaluation, tables));
  }

  /** All records. */
  public List<MeasurementRecord> records() {
    return tables.stream().flatMap(table -> table.records().stream()).toList();
  }

  private static Coverage coverage(
      Workbook workbook, Evaluation evaluation, List<RecordTable> tables) {
    Map<CellAddress, Taken> parts = new LinkedHashMap<>();
    for (RecordTable table : tables) {
      for (MeasurementRecord measurement : table.records()) {
        for (Field field : Field.values()) {
          measurement
              .cell(field)
              .ifPresent(
                  cell -> parts.putIfAbsent(cell.address(), new Taken.Part(measurement, field)));
        }
      }
    }
    Map<CellAddress, Taken> cells = new LinkedHashMap<>();
    workbook.sheets().stream()
        .filter(sheet -> !sheet.hidden())
        .flatMap(Sheet::cells)
        .forEach(cell -> take(cell, evaluation, parts, cells));
    return new Coverage(cells);
  }

  private static void take(
      Cell cell,
      Evaluation evaluation,
      Map<CellAddress, Taken> parts,
      Map<CellAddress, Taken> cells) {
    Taken part = parts.get(cell.address());
    if (part != null) {
      cells.put(cell.address(), part);
    } else if (evaluation.number(cell.address()).isPresent()) {
      cells.put(cell.address(), cell.content() instanceof Content.Formula ? CALCULATED : UNKNOWN);
    }
  }
}
