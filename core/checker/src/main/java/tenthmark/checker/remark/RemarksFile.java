package tenthmark.checker.remark;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.grade.Csv;
import tenthmark.checker.roster.CsvTable;

/**
 * The file in which an instructor keeps the last word: a table with a row for each remark. The
 * checker only reads it.
 */
public final class RemarksFile {

  /** The headings of its columns. */
  public static final List<String> HEADINGS =
      List.of("student", "rule", "cell", "points", "because");

  private RemarksFile() {}

  /** The row of headings, its end included. */
  public static String headings() {
    return Csv.row(HEADINGS);
  }

  /**
   * Reads a file.
   *
   * @param rules the ids of all rules
   * @throws IOException if something in it cannot be used; its message says what, in a line
   */
  public static List<Remark> read(Path file, Set<String> rules) throws IOException {
    CsvTable table = CsvTable.read(file);
    for (String heading : HEADINGS) {
      if (table.heading(heading).isEmpty()) {
        throw new IOException(
            "there is no column " + heading + "; the columns are " + String.join(", ", HEADINGS));
      }
    }
    List<Remark> remarks = new ArrayList<>();
    for (CsvTable.Row row : table.rows()) {
      if (HEADINGS.stream().anyMatch(heading -> !row.value(heading).isEmpty())) {
        remarks.add(remark(row, rules));
      }
    }
    return remarks;
  }

  private static Remark remark(CsvTable.Row row, Set<String> rules) throws IOException {
    String rule = row.value("rule");
    String cell = row.value("cell");
    if (row.value("student").isEmpty()) {
      throw problem(row, "the student is missing");
    }
    if (!rule.isEmpty() && !rules.contains(rule)) {
      throw problem(row, "there is no rule " + rule + "; the command rules prints them all");
    }
    if (rule.isEmpty() && !cell.isEmpty()) {
      throw problem(row, "a cell needs the rule of its finding");
    }
    if (row.value("because").isEmpty()) {
      throw problem(row, "the sentence for the student is missing");
    }
    return new Remark(
        row.line(),
        row.value("student"),
        Optional.of(rule).filter(id -> !id.isEmpty()),
        Optional.of(cell).filter(place -> !place.isEmpty()),
        points(row),
        row.value("because"));
  }

  private static BigDecimal points(CsvTable.Row row) throws IOException {
    String text = row.value("points");
    if (!text.matches("[0-9]{1,6}(?:[.,][0-9]{1,6})?")) {
      throw problem(row, "the points must be a number of 0 or more, such as 0.5");
    }
    return new BigDecimal(text.replace(',', '.'));
  }

  private static IOException problem(CsvTable.Row row, String line) {
    return new IOException("row " + row.line() + ": " + line);
  }
}
