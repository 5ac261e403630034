package tenthmark.checker.reading.layout;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;

/**
 * The unit of a value for which its table names none, where a person would look for it: in its
 * number format, behind the value, behind its uncertainty, in the label beside or above it, in the
 * caption of its table.
 */
public final class NearbyUnits {

  private static final int FARTHEST_CAPTION = 40;
  private static final int LONGEST_SENTENCE = 300;
  private static final Pattern WORDS = Pattern.compile("[\\s,;:!?]+|[.](?=\\s|$)");

  private final Surroundings surroundings;
  private final Labels labels;

  private NearbyUnits(Surroundings surroundings) {
    this.surroundings = surroundings;
    this.labels = new Labels(surroundings);
  }

  /** Gives units to the records that have none. */
  public static void find(Surroundings surroundings, List<Resolver.Settled> settled) {
    NearbyUnits units = new NearbyUnits(surroundings);
    for (Resolver.Settled table : settled) {
      boolean told = table.drafts().stream().anyMatch(NearbyUnits::hasUnit);
      table.drafts().stream()
          .filter(draft -> !hasUnit(draft))
          .forEach(draft -> units.find(draft, !told));
    }
  }

  private static boolean hasUnit(Draft draft) {
    return draft.place(Field.UNIT).isPresent() || !draft.unit(Field.VALUE).isEmpty();
  }

  private void find(Draft draft, boolean captions) {
    CellAddress value = draft.place(Field.VALUE).orElseThrow();
    Optional<TypedSheet> sheet = surroundings.sheet(value.sheet());
    if (sheet.isEmpty()
        || sheet.get().at(value.column(), value.row()).filter(c -> !c.isText()).isEmpty()) {
      return;
    }
    near(sheet.get(), value, draft.place(Field.UNCERTAINTY))
        .or(() -> captions ? caption(sheet.get(), value) : Optional.empty())
        .or(() -> captions ? ofAll(sheet.get()) : Optional.empty())
        .ifPresent(unit -> draft.unit(Field.VALUE, unit));
  }

  /** The unit right beside a value or its uncertainty, or in what names it. */
  static Optional<String> near(
      Surroundings surroundings, CellAddress value, CellAddress uncertainty) {
    return surroundings
        .sheet(value.sheet())
        .flatMap(
            sheet -> new NearbyUnits(surroundings).near(sheet, value, Optional.of(uncertainty)));
  }

  private Optional<String> near(
      TypedSheet sheet, CellAddress value, Optional<CellAddress> uncertainty) {
    Optional<CellAddress> size = uncertainty.filter(cell -> cell.sheet().equals(sheet.name()));
    return Shown.unit(sheet, value, surroundings.grammar())
        .or(() -> behind(sheet, value))
        .or(() -> size.flatMap(cell -> Shown.unit(sheet, cell, surroundings.grammar())))
        .or(() -> size.flatMap(cell -> behind(sheet, cell)))
        .or(() -> labels.left(value).map(Labels.Label::heading).flatMap(NearbyUnits::unit))
        .or(() -> labels.above(value).map(Labels.Label::heading).flatMap(NearbyUnits::unit));
  }

  /** The unit in the text right behind a number, be it after a sign. */
  private Optional<String> behind(TypedSheet sheet, CellAddress number) {
    return sheet
        .at(number.column() + 1, number.row())
        .filter(TypedCell::isText)
        .map(cell -> cell.text().replaceFirst("^±\\s*", ""))
        .flatMap(surroundings.grammar()::leadingUnit);
  }

  private static Optional<String> unit(Heading heading) {
    return Optional.of(heading.unit()).filter(unit -> !unit.isEmpty());
  }

  /** The one unit of which a text on the sheet says that all is in it. */
  private Optional<String> ofAll(TypedSheet sheet) {
    List<String> said =
        sheet.cells().stream()
            .filter(cell -> cell.isText() && cell.text().length() <= LONGEST_SENTENCE)
            .filter(cell -> vocabulary().mentions(Notion.ALL, cell.text()))
            .flatMap(cell -> unitsAfterIn(cell.text()))
            .distinct()
            .toList();
    return said.size() == 1 ? Optional.of(said.get(0)) : Optional.empty();
  }

  private Stream<String> unitsAfterIn(String text) {
    List<String> words = WORDS.splitAsStream(text).toList();
    return IntStream.range(1, words.size())
        .filter(i -> vocabulary().says(Notion.IN, words.get(i - 1)))
        .mapToObj(words::get)
        .filter(surroundings.grammar()::isUnit);
  }

  private Vocabulary vocabulary() {
    return surroundings.grammar().vocabulary();
  }

  /** The unit in the line of text right above the rows that a value stands among. */
  private Optional<String> caption(TypedSheet sheet, CellAddress value) {
    for (int row = value.row() - 1; row >= Math.max(0, value.row() - FARTHEST_CAPTION); row--) {
      NavigableMap<Integer, TypedCell> cells = sheet.row(row);
      if (cells.isEmpty()) {
        return Optional.empty();
      }
      Map.Entry<Integer, TypedCell> first = cells.firstEntry();
      if (cells.size() == 1 && first.getValue().isText()) {
        return surroundings
            .grammar()
            .read(first.getValue().text())
            .flatMap(NearbyUnits::unit)
            .filter(unit -> !HeadingGrammar.bare(first.getValue().text()).equals(unit));
      }
    }
    return Optional.empty();
  }
}
