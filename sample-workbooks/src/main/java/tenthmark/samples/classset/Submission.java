package tenthmark.samples.classset;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.samples.lab.RecordColumns;
import tenthmark.samples.plan.Places;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.WorkbookPlan;

/**
 * What one student hands in.
 *
 * @param number from 1
 * @param student an invented name
 * @param format the ending of the file, without dot
 * @param mistakes planted in it; empty for a correct one
 */
public record Submission(
    int number,
    String student,
    Layout layout,
    Method method,
    String format,
    List<Mistake> mistakes) {

  /** The name of the file without its ending. */
  public String fileName() {
    return "bench-%02d".formatted(number);
  }

  /** The values before any mistake. */
  public List<Object> readings() {
    return new BenchSession(number, method, layout.columns())
        .rows().stream().map(row -> row.content(RecordColumns.VALUE)).toList();
  }

  /** The workbook, with the mistakes. */
  public WorkbookPlan plan() {
    return plan(changes().toList());
  }

  /** The workbook when its program calculated for the last time. */
  public WorkbookPlan calculated() {
    return plan(changes().filter(change -> !(change instanceof Change.Retype)).toList());
  }

  /** The numbers by cell that were typed in after that. */
  public Map<String, Double> retyped() {
    Places places = plan().places();
    return changes()
        .filter(Change.Retype.class::isInstance)
        .map(Change.Retype.class::cast)
        .collect(
            Collectors.toMap(
                change -> places.address(change.row() + "." + change.column().key()),
                Change.Retype::number));
  }

  /** Whether a program without the extension saved it last. */
  public boolean savedWithoutExtension() {
    return mistakes.contains(Mistakes.WITHOUT_EXTENSION);
  }

  private Stream<Change> changes() {
    return mistakes.stream().flatMap(mistake -> mistake.changes().stream());
  }

  private WorkbookPlan plan(List<Change> changes) {
    List<Row> rows = layout.rows(new BenchSession(number, method, layout.columns()).rows());
    for (Change change : changes) {
      rows = change.in(rows);
    }
    return new WorkbookPlan(
        "First bench session: " + student,
        "An invented student with invented numbers.",
        layout.sheets(rows));
  }
}
