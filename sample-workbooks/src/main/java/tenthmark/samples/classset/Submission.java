package tenthmark.samples.classset;

import java.util.List;
import tenthmark.samples.lab.RecordColumns;
import tenthmark.samples.plan.Block;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;
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
    List<Row> rows = new BenchSession(number, method, layout.columns()).rows();
    for (Mistake mistake : mistakes) {
      for (Change change : mistake.changes()) {
        rows = change.in(rows);
      }
    }
    List<Block> blocks = layout.blocks(rows);
    Table widest = (Table) blocks.get(blocks.size() - 1);
    return new WorkbookPlan(
        "First bench session: " + student,
        "An invented student with invented numbers.",
        List.of(
            new SheetPlan(
                "Bench",
                widest.columns().stream().map(column -> column.width()).toList(),
                blocks)));
  }
}
