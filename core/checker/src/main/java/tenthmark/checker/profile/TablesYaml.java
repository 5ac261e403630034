package tenthmark.checker.profile;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tenthmark.checker.reading.CoverageSummary.Unread;
import tenthmark.checker.reading.TableGuide;
import tenthmark.checker.record.Field;
import tenthmark.checker.report.ReadingText;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Writes how the tables of a workbook were read, as an instructor can correct it. Where a sheet was
 * understood wholly, its tables stand in comments: so the workbooks of students who draw them
 * elsewhere are read by their own headings.
 */
final class TablesYaml {

  private static final String TOP =
      """

      # How single tables are to be read, whatever their headings: the range holds the records
      # without their headings, the roles say what each column holds (each row, with "direction:
      # across", where the records stand side by side). A role is quantity, symbol, value, unit,
      # uncertainty, rationale or another of the words under headings. Below is how the tables of
      # this workbook were read; those in comments need no help. The command reading shows it.
      """;

  /** A heading stands at most so many rows above its column. */
  private static final int HEADING_WITHIN = 3;

  private static final int LONGEST_HEADING = 60;

  private final Inspection inspection;
  private final ProfileYaml yaml = new ProfileYaml();

  TablesYaml(Inspection inspection) {
    this.inspection = inspection;
  }

  String write() {
    List<Unread> unread = inspection.coverage().unread();
    List<TableGuide> guides = TablesStart.of(inspection.tables());
    boolean none = guides.stream().noneMatch(this::isIncomplete);
    StringBuilder text = new StringBuilder(TOP);
    text.append(none ? "# tables:\n" : "tables:\n");
    guides.forEach(guide -> text.append(entry(guide)));
    if (guides.isEmpty()) {
      text.append("#   - {sheet: Bench, range: \"A5:F12\", roles: {A: quantity, B: value}}\n");
    }
    unread.forEach(entry -> text.append(notRead(entry)));
    return text.toString();
  }

  /** Whether something on its sheet was not read. */
  private boolean isIncomplete(TableGuide guide) {
    return inspection.coverage().unread().stream()
        .anyMatch(unread -> unread.first().sheet().equals(guide.range().sheet()));
  }

  private static String notRead(Unread unread) {
    String sentence = CheckerTexts.english().say(ReadingText.unread(unread));
    return "# " + ProfileStart.oneLine(sentence) + ".\n";
  }

  private String entry(TableGuide guide) {
    CellRange range = guide.range();
    StringBuilder entry = new StringBuilder();
    entry.append("  - sheet: ").append(yaml.text(range.sheet())).append('\n');
    entry.append("    range: ").append(first(range)).append(':').append(last(range)).append('\n');
    entry.append("    direction: ").append(guide.across() ? "across" : "down").append('\n');
    entry.append("    roles:\n");
    new TreeMap<>(guide.fields())
        .forEach((place, field) -> entry.append(role(guide, place, field)));
    return isIncomplete(guide)
        ? entry.toString()
        : entry.toString().lines().map(line -> "# " + line + "\n").collect(Collectors.joining());
  }

  private static String first(CellRange range) {
    return range.first().place();
  }

  private static String last(CellRange range) {
    return new CellAddress(range.sheet(), range.right(), range.bottom()).place();
  }

  private String role(TableGuide guide, int place, Field field) {
    String key = guide.across() ? String.valueOf(place + 1) : letters(place);
    String line = "      " + key + ": " + field.word();
    return heading(guide, place).map(text -> line + "  # " + text).orElse(line) + "\n";
  }

  private static String letters(int column) {
    return new CellAddress("", column, 0).place().replaceAll("\\d", "");
  }

  /** The text above a column of the range, or to the left of a row. */
  private Optional<String> heading(TableGuide guide, int place) {
    CellRange range = guide.range();
    return IntStream.rangeClosed(1, HEADING_WITHIN)
        .mapToObj(
            before ->
                guide.across()
                    ? new CellAddress(range.sheet(), range.left() - before, place)
                    : new CellAddress(range.sheet(), place, range.top() - before))
        .flatMap(cell -> inspection.workbook().at(cell).stream())
        .map(cell -> cell.content())
        .filter(Content.Text.class::isInstance)
        .map(content -> ProfileStart.oneLine(((Content.Text) content).text()))
        .filter(text -> !text.isEmpty())
        .map(text -> text.length() > LONGEST_HEADING ? text.substring(0, LONGEST_HEADING) : text)
        .findFirst();
  }
}
