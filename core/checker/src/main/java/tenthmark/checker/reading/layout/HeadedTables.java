package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.Lines;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Notion;
import tenthmark.measurement.formula.CellRange;

/**
 * Tables with headings: a record a row, a quantity a pair of columns, or either turned by a quarter
 * where the records stand side by side.
 *
 * @param direction how the records lie
 */
record HeadedTables(Direction direction) implements Layout {

  private static final int LONGEST_GAP = 1;
  private static final int MOST_LABELLED = 2;

  @Override
  public List<Proposal> propose(Block block, Surroundings surroundings) {
    Lines lines = block.lines(direction);
    List<Header> headers = new Headers(lines, surroundings.grammar()).find();
    List<Proposal> proposals = new ArrayList<>();
    for (Header header : headers) {
      HeadedTable table =
          new HeadedTable(
              lines,
              header,
              body(header, headers, lines, extent(lines, header, surroundings)),
              surroundings);
      table.proposal().ifPresent(proposals::add);
    }
    return proposals;
  }

  /** The range with a name for records that begins with these headings, if there is one. */
  private static Optional<CellRange> extent(Lines lines, Header header, Surroundings surroundings) {
    String sheet = lines.block().sheet().name();
    return surroundings.workbook().names().stream()
        .filter(name -> isOfRecords(name.name(), surroundings))
        .flatMap(name -> surroundings.evaluation().namedRange(name.name(), sheet).stream())
        .filter(range -> range.sheet().equalsIgnoreCase(sheet))
        .map(lines.direction()::turned)
        .filter(range -> range.top() == header.first())
        .filter(range -> header.left() >= range.left() && header.left() <= range.right())
        .findFirst();
  }

  private static boolean isAfterBlank(Header header, Lines lines) {
    return !lines.all().containsKey(header.first() - 1);
  }

  private static boolean isOfRecords(String name, Surroundings surroundings) {
    return surroundings.grammar().vocabulary().says(Notion.RECORDS, name.split("[_.\\d]", 2)[0]);
  }

  /**
   * Whether, after a blank line, labels and units stand in columns that held numbers only, or
   * labels at the table's left edge.
   */
  private static boolean isLabelled(int first, List<Integer> body, Lines lines, int left) {
    Map<Integer, Integer> texts = new HashMap<>();
    int line = first;
    while (lines.all().containsKey(line)) {
      lines
          .line(line)
          .forEach(
              (place, cell) ->
                  texts.merge(
                      place,
                      cell.isText() && !Column.isAmount(cell.text()) ? 1 : -1,
                      Integer::sum));
      line++;
    }
    List<Integer> labelled =
        texts.entrySet().stream()
            .filter(column -> column.getValue() > 1)
            .map(Map.Entry::getKey)
            .filter(place -> isOfNumbers(place, body, lines))
            .toList();
    return labelled.size() >= MOST_LABELLED || labelled.contains(left);
  }

  /** A sentence alone in its line says nothing of the column that it begins in. */
  private static boolean isOfNumbers(int place, List<Integer> body, Lines lines) {
    List<TypedCell> cells =
        body.stream()
            .filter(line -> lines.line(line).size() > 1)
            .flatMap(line -> lines.at(line, place).stream())
            .toList();
    return !cells.isEmpty() && cells.stream().allMatch(TypedCell::isNumber);
  }

  /** The lines below a header, as far as the next one that shares a place with it. */
  private static List<Integer> body(
      Header header, List<Header> headers, Lines lines, Optional<CellRange> extent) {
    int end =
        headers.stream()
            .filter(other -> other.first() > header.last() && other.overlaps(header))
            .filter(other -> other.isTelling() || isAfterBlank(other, lines))
            .filter(
                other ->
                    lines.direction() == Direction.ROWS || 2 * other.telling() >= header.telling())
            .mapToInt(Header::first)
            .min()
            .orElse(Integer.MAX_VALUE);
    end = Math.min(end, extent.map(range -> range.bottom() + 1).orElse(Integer.MAX_VALUE));
    List<Integer> body = new ArrayList<>();
    int previous = header.last();
    for (Map.Entry<Integer, NavigableMap<Integer, TypedCell>> line :
        lines.all().tailMap(header.last(), false).entrySet()) {
      boolean gap = line.getKey() - previous - 1 > LONGEST_GAP;
      if (line.getKey() >= end || gap) {
        break;
      }
      boolean blank = line.getKey() - previous > 1 && previous != header.last();
      if (blank
          && lines.direction() == Direction.ROWS
          && isLabelled(line.getKey(), body, lines, header.left())) {
        break;
      }
      if (lines.direction() == Direction.ROWS
          || !line.getValue().subMap(header.left(), true, header.right(), true).isEmpty()) {
        body.add(line.getKey());
        previous = line.getKey();
      }
    }
    return body;
  }
}
