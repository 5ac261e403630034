package tenthmark.checker.profile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tenthmark.checker.reading.CoverageSummary.Unread;
import tenthmark.checker.reading.TableGuide;
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

  /** More are not offered to be filled in. */
  private static final int MOST_COLUMNS = 30;

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
    if (guides.isEmpty() && unread.isEmpty()) {
      text.append("#   - {sheet: Bench, range: \"A5:F12\", roles: {A: quantity, B: value}}\n");
    }
    unread.stream()
        .filter(entry -> guides.stream().noneMatch(guide -> isOn(entry.first().sheet(), guide)))
        .collect(
            Collectors.groupingBy(
                entry -> entry.first().sheet(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(entries -> text.append(unknown(entries)));
    unread.forEach(entry -> text.append(notRead(entry)));
    return text.toString();
  }

  /** Whether something on its sheet was not read. */
  private boolean isIncomplete(TableGuide guide) {
    return inspection.coverage().unread().stream()
        .anyMatch(unread -> unread.first().sheet().equals(guide.range().sheet()));
  }

  private static boolean isOn(String sheet, TableGuide guide) {
    return guide.range().sheet().equals(sheet);
  }

  /** A table of which nothing was read, for the instructor to fill in. */
  private String unknown(List<Unread> entries) {
    List<CellRange> ranges = entries.stream().flatMap(entry -> entry.ranges().stream()).toList();
    CellRange all =
        new CellRange(
            ranges.get(0).sheet(),
            ranges.stream().mapToInt(CellRange::left).min().orElseThrow(),
            ranges.stream().mapToInt(CellRange::top).min().orElseThrow(),
            ranges.stream().mapToInt(CellRange::right).max().orElseThrow(),
            ranges.stream().mapToInt(CellRange::bottom).max().orElseThrow());
    TableGuide guide = new TableGuide(all, false, Map.of());
    StringBuilder entry = new StringBuilder();
    entry.append("  - sheet: ").append(yaml.text(all.sheet())).append('\n');
    entry.append("    range: ").append(first(all)).append(':').append(last(all)).append('\n');
    entry.append("    roles:\n");
    IntStream.rangeClosed(all.left(), Math.min(all.right(), all.left() + MOST_COLUMNS))
        .forEach(column -> entry.append(role(guide, column, "fill in")));
    return commented(entry);
  }

  private static String commented(CharSequence entry) {
    return entry.toString().lines().map(line -> "# " + line + "\n").collect(Collectors.joining());
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
        .forEach((place, field) -> entry.append(role(guide, place, field.word())));
    return isIncomplete(guide) ? entry.toString() : commented(entry);
  }

  private static String first(CellRange range) {
    return range.first().place();
  }

  private static String last(CellRange range) {
    return new CellAddress(range.sheet(), range.right(), range.bottom()).place();
  }

  private String role(TableGuide guide, int place, String role) {
    String key = guide.across() ? String.valueOf(place + 1) : letters(place);
    String line = "      " + key + ": " + role;
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
