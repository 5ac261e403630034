package tenthmark.checker.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellRange;

/**
 * Finds the measurement records of a workbook: below a row of headings in any order, in a range
 * whose name begins with "records", and in rows that use LAB functions without any heading.
 */
public final class RecordFinder {

  private static final String RANGE_NAME = "records";

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final HeadingWords words;

  private RecordFinder(Workbook workbook, Evaluation evaluation, HeadingWords words) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    this.words = words;
  }

  /** The tables with at least one record, sheet by sheet from top to bottom. */
  public static List<RecordTable> find(
      Workbook workbook, Evaluation evaluation, HeadingWords words) {
    RecordFinder finder = new RecordFinder(workbook, evaluation, words);
    return workbook.sheets().stream().flatMap(sheet -> finder.tables(sheet).stream()).toList();
  }

  private List<RecordTable> tables(Sheet sheet) {
    List<RecordTable> tables = new ArrayList<>();
    Set<Integer> taken = new HashSet<>();
    for (int row : sheet.rows()) {
      for (Headings headings : Headings.in(sheet, row, words)) {
        HeadedTable table =
            new HeadedTable(workbook, evaluation, sheet, words, headings, extent(sheet, headings));
        RecordTable found = table.read();
        taken.addAll(table.rowsTaken());
        if (!found.records().isEmpty()) {
          tables.add(found);
        }
      }
    }
    FunctionRows rows = new FunctionRows(workbook, evaluation, sheet, words);
    RecordTable rest =
        new RecordTable(
            sheet.rows().stream()
                .filter(row -> !taken.contains(row))
                .flatMap(row -> rows.read(row).stream())
                .toList());
    if (!rest.records().isEmpty()) {
      tables.add(rest);
    }
    return tables;
  }

  /** The range with a name of ours that begins with these headings, if there is one. */
  private Optional<CellRange> extent(Sheet sheet, Headings headings) {
    return workbook.names().stream()
        .filter(name -> name.name().toLowerCase(Locale.ROOT).startsWith(RANGE_NAME))
        .flatMap(name -> evaluation.named(name.name(), sheet.name()).stream())
        .filter(range -> range.sheet().equalsIgnoreCase(sheet.name()))
        .filter(range -> range.top() == headings.row())
        .filter(range -> headings.left() >= range.left() && headings.left() <= range.right())
        .findFirst();
  }
}
