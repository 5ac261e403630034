package tenthmark.checker.report;

import java.util.List;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;

/**
 * What the checker read in a workbook, small enough to be kept for a whole class.
 *
 * @param sheets in their order
 * @param records the measurement records that were recognised, sheet by sheet
 */
public record Contents(List<SheetSize> sheets, List<RecordSummary> records) {

  /** Of a file that could not be checked. */
  public static final Contents NONE = new Contents(List.of(), List.of());

  /**
   * How much a sheet holds.
   *
   * @param hidden whether the user does not see it
   * @param cells that hold something, formulas included
   */
  public record SheetSize(String name, boolean hidden, int cells, int formulas) {

    private static SheetSize of(Sheet sheet) {
      List<Content> contents = sheet.cells().map(Cell::content).toList();
      long formulas = contents.stream().filter(Content.Formula.class::isInstance).count();
      return new SheetSize(sheet.name(), sheet.hidden(), contents.size(), (int) formulas);
    }
  }

  /** Copies the lists. */
  public Contents {
    sheets = List.copyOf(sheets);
    records = List.copyOf(records);
  }

  static Contents of(Inspection inspection) {
    return new Contents(
        inspection.workbook().sheets().stream().map(SheetSize::of).toList(),
        inspection.records().stream().map(RecordSummary::of).toList());
  }
}
