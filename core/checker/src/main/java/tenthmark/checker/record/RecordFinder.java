package tenthmark.checker.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellRange;

/**
 * Finds the measurement records of a workbook: below a row of headings in any order, beside a
 * column of them, in a range whose name begins with "records", and in rows without any heading that
 * use LAB functions or hold the slope of a line.
 */
public final class RecordFinder {

  private static final String RANGE_NAME = "records";

  private static final Pattern GIVEN =
      Pattern.compile(
          "\\b(?:constants?|given|accepted|literature|handbook|known)\\b",
          Pattern.CASE_INSENSITIVE);

  private static final int TITLE_WITHIN = 2;

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final HeadingWords words;
  private final HeadingReader reader;

  private RecordFinder(Workbook workbook, Evaluation evaluation, HeadingWords words) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    this.words = words;
    this.reader = new HeadingReader(words);
  }

  /** The tables with at least one record, sheet by sheet from top to bottom. */
  public static List<RecordTable> find(
      Workbook workbook, Evaluation evaluation, HeadingWords words) {
    RecordFinder finder = new RecordFinder(workbook, evaluation, words);
    return workbook.sheets().stream()
        .filter(sheet -> !sheet.hidden())
        .flatMap(sheet -> finder.tables(sheet).stream())
        .toList();
  }

  private List<RecordTable> tables(Sheet sheet) {
    Lines rows = Lines.rows(sheet);
    Set<Integer> taken = new HashSet<>();
    List<RecordTable> tables = new ArrayList<>(headed(rows, sheet, taken));
    tables.addAll(headed(Lines.columns(sheet), sheet, taken));
    FunctionRows functions = new FunctionRows(workbook, evaluation, sheet, rows, words);
    SlopeRows slopes = new SlopeRows(workbook, evaluation, sheet, words);
    RecordTable rest =
        new RecordTable(
            sheet.rows().stream()
                .filter(row -> !taken.contains(row))
                .flatMap(row -> functions.read(row).or(() -> slopes.read(row)).stream())
                .toList());
    if (!rest.records().isEmpty()) {
      tables.add(rest);
    }
    return tables;
  }

  /**
   * The tables with headings in rows, or in columns beside rows that no other table has taken.
   *
   * @param taken the rows that belong to tables, to which those found are added
   */
  private List<RecordTable> headed(Lines lines, Sheet sheet, Set<Integer> taken) {
    List<RecordTable> tables = new ArrayList<>();
    Map<Integer, List<Headings>> byLine = new TreeMap<>();
    lines.numbers().forEach(line -> byLine.put(line, Headings.in(lines, line, reader)));
    for (int line : lines.numbers()) {
      for (Headings headings : byLine.get(line)) {
        if (isOfConstants(headings, lines, sheet)
            || (lines.areColumns() && !Collections.disjoint(taken, rows(headings)))) {
          continue;
        }
        HeadedTable table =
            new HeadedTable(
                workbook, evaluation, lines, words, headings, byLine, extent(lines, headings));
        RecordTable found = table.read();
        if (!lines.areColumns()) {
          taken.add(line);
          taken.addAll(table.linesTaken());
        } else if (!found.records().isEmpty()) {
          taken.addAll(rows(headings));
        }
        if (!found.records().isEmpty()) {
          tables.add(found);
        }
      }
    }
    return tables;
  }

  /** The rows of headings that stand in a column. */
  private static List<Integer> rows(Headings headings) {
    return IntStream.rangeClosed(headings.left(), headings.right()).boxed().toList();
  }

  /** Quantities with value and unit alone may be given ones, if the sheet or a title says so. */
  private boolean isOfConstants(Headings headings, Lines lines, Sheet sheet) {
    return !headings.telling()
        && (GIVEN.matcher(sheet.name()).find()
            || IntStream.rangeClosed(1, TITLE_WITHIN)
                .mapToObj(above -> lines.cells(headings.line() - above))
                .flatMap(List::stream)
                .anyMatch(
                    cell ->
                        cell.content() instanceof Content.Text text
                            && GIVEN.matcher(text.text()).find()));
  }

  /** The range with a name of ours that begins with these headings, if there is one. */
  private Optional<CellRange> extent(Lines lines, Headings headings) {
    String sheet = lines.address(headings.line(), headings.left()).sheet();
    return workbook.names().stream()
        .filter(name -> name.name().toLowerCase(Locale.ROOT).startsWith(RANGE_NAME))
        .flatMap(name -> evaluation.named(name.name(), sheet).stream())
        .filter(range -> range.sheet().equalsIgnoreCase(sheet))
        .map(lines::turned)
        .filter(range -> range.top() == headings.line())
        .filter(range -> headings.left() >= range.left() && headings.left() <= range.right())
        .findFirst();
  }
}
