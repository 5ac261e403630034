package tenthmark.checker.reading.reason;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.layout.Draft;
import tenthmark.checker.reading.layout.Proposal;
import tenthmark.checker.reading.reason.Prose.Written;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.Rationale;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Finds the reason of each record wherever people write it: in its column, in the line below it, in
 * a remark, in a comment on one of its cells, or in a text that names it or that is called the
 * reasons of the whole table, on its sheet or another.
 */
public final class Reasons {

  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}_'′²³₀-₉]+");

  private final Map<String, TypedSheet> sheets = new LinkedHashMap<>();
  private final Map<String, List<Prose>> prose = new LinkedHashMap<>();
  private final Map<CellAddress, String> comments = new HashMap<>();
  private final HeadingGrammar grammar;
  private final Set<CellAddress> headings;
  private final Texts texts;
  private final Map<String, Optional<Rationale>> named = new HashMap<>();
  private final Map<Prose, String> spaced = new HashMap<>();
  private final Map<String, Boolean> numbered = new HashMap<>();

  /**
   * The reasons in a workbook.
   *
   * @param headings the cells that name columns or parts of records
   * @param parts the cells of records and those that name them: a comment on one is about it
   * @param noted the same sheets with what is noted on them
   */
  public Reasons(
      List<TypedSheet> sheets,
      HeadingGrammar grammar,
      Set<CellAddress> headings,
      Set<CellAddress> parts,
      List<Sheet> noted) {
    this.grammar = grammar;
    this.headings = headings;
    this.texts = new Texts(grammar);
    for (TypedSheet sheet : sheets) {
      this.sheets.put(sheet.name(), sheet);
      this.prose.put(sheet.name(), texts.of(sheet, headings));
    }
    noted.forEach(sheet -> note(sheet, parts));
  }

  /** A comment on a number or a part of a record is about that; any other may be about a table. */
  private void note(Sheet sheet, Set<CellAddress> parts) {
    List<Prose> all = prose.computeIfAbsent(sheet.name(), name -> new ArrayList<>());
    sheet.boxes().forEach(box -> all.addAll(texts.of(box)));
    sheet
        .comments()
        .forEach(
            (cell, comment) -> {
              comments.put(cell, comment);
              if (!parts.contains(cell) && cell(cell).filter(TypedCell::mayBeNumber).isEmpty()) {
                all.add(texts.of(cell, comment));
              }
            });
  }

  /** The texts that serve as reasons, so that they are not taken for anything else. */
  public Set<CellAddress> cells() {
    Set<CellAddress> cells = new HashSet<>();
    prose
        .values()
        .forEach(
            all ->
                all.stream()
                    .filter(found -> found.written() == Written.IN_CELL && isReason(found))
                    .forEach(found -> cells.add(found.cell())));
    return cells;
  }

  /** The reason of each record of a table, where there is one or a place for one. */
  public Map<Draft, Optional<Rationale>> of(Proposal table, List<Draft> drafts) {
    boolean column = isFilled(drafts);
    boolean beneath = isBeneath(table, drafts);
    Map<Draft, Optional<Rationale>> reasons = new LinkedHashMap<>();
    for (Draft draft : drafts) {
      Optional<Rationale> own = inCell(draft, Field.RATIONALE);
      reasons.put(
          draft,
          own.filter(Reasons::saysSomething)
              .or(() -> beneath ? at(table, draft.line() + 1) : Optional.empty())
              .or(() -> beneath ? fewWordsAt(table, draft.line() + 1) : Optional.empty())
              .or(() -> inCell(draft, Field.REMARK).filter(Reasons::saysSomething))
              .or(() -> comment(draft))
              .or(() -> column || beneath ? Optional.empty() : elsewhere(table, draft))
              .or(() -> own));
    }
    return reasons;
  }

  /** Whether a column of reasons is filled for more than one record, so that each has its own. */
  private boolean isFilled(List<Draft> drafts) {
    long filled =
        drafts.stream()
            .filter(
                draft -> inCell(draft, Field.RATIONALE).filter(Reasons::saysSomething).isPresent())
            .map(draft -> draft.place(Field.RATIONALE).orElseThrow())
            .distinct()
            .count();
    boolean place = drafts.stream().anyMatch(draft -> draft.place(Field.RATIONALE).isPresent());
    return place && (filled > 1 || drafts.size() < 3);
  }

  /**
   * Whether reasons stand below the records one by one; one alone below the last record, or below
   * one of many, speaks for all.
   */
  private boolean isBeneath(Proposal table, List<Draft> drafts) {
    List<Integer> lines = drafts.stream().map(Draft::line).distinct().sorted().toList();
    List<Integer> with = lines.stream().filter(line -> isAt(table, line + 1)).toList();
    Integer last = lines.get(lines.size() - 1);
    return 2 * with.size() > lines.size() && with.size() > 1
        || with.size() == 1
            && (lines.size() == 1 || lines.size() == 2 && !with.get(0).equals(last));
  }

  private static boolean saysSomething(Rationale rationale) {
    return !rationale.text().isEmpty();
  }

  private Optional<Rationale> inCell(Draft draft, Field field) {
    return draft
        .place(field)
        .map(
            cell ->
                new Rationale(
                    cell, cell(cell).filter(TypedCell::isText).map(TypedCell::text).orElse("")));
  }

  private Optional<TypedCell> cell(CellAddress address) {
    return Optional.ofNullable(sheets.get(address.sheet()))
        .flatMap(sheet -> sheet.at(address.column(), address.row()));
  }

  private Optional<Rationale> comment(Draft draft) {
    List<CellAddress> cells = new ArrayList<>(draft.places().values());
    cells.addAll(draft.headings());
    List<CellAddress> with = cells.stream().distinct().filter(comments::containsKey).toList();
    return with.stream()
        .findFirst()
        .map(
            first ->
                new Rationale(
                    first, with.stream().map(comments::get).collect(Collectors.joining("\n"))));
  }

  /** The cells of a line of a table. */
  private List<TypedCell> line(Proposal table, int line) {
    CellRange area = table.direction().turned(table.area());
    TypedSheet sheet = sheets.get(area.sheet());
    if (sheet == null) {
      return List.of();
    }
    if (table.direction() == Direction.ROWS) {
      NavigableMap<Integer, TypedCell> row = sheet.row(line);
      return List.copyOf(row.subMap(area.left(), true, area.right(), true).values());
    }
    List<TypedCell> cells = new ArrayList<>();
    for (int row = area.left(); row <= area.right(); row++) {
      sheet.at(line, row).ifPresent(cells::add);
    }
    return cells;
  }

  /** Whether a line holds nothing but a reason: a labelled text, or one of several words. */
  private boolean isAt(Proposal table, int line) {
    List<TypedCell> cells = line(table, line);
    if (cells.isEmpty() || !cells.stream().allMatch(TypedCell::isText)) {
      return false;
    }
    String first = cells.get(0).text();
    return texts.isLabel(first)
        || texts.labelBefore(first).isPresent()
        || isAlone(cells) && Texts.words(first) >= Texts.WORDS;
  }

  /** Whether a cell stands alone in its line and names no part of a record. */
  private boolean isAlone(List<TypedCell> cells) {
    return cells.size() == 1 && !headings.contains(cells.get(0).address());
  }

  private Optional<Rationale> at(Proposal table, int line) {
    if (!isAt(table, line)) {
      return Optional.empty();
    }
    List<TypedCell> cells = line(table, line);
    List<String> said = new ArrayList<>(cells.stream().map(TypedCell::text).toList());
    said.set(0, texts.isLabel(said.get(0)) ? "" : texts.withoutLabel(said.get(0)));
    return Optional.of(
        new Rationale(cells.get(cells.size() - 1).address(), String.join(" ", said).strip()));
  }

  private Optional<Rationale> fewWordsAt(Proposal table, int line) {
    List<TypedCell> cells = line(table, line);
    return isAlone(cells) && cells.get(0).isText() && Texts.words(cells.get(0).text()) > 1
        ? Optional.of(new Rationale(cells.get(0).address(), cells.get(0).text()))
        : Optional.empty();
  }

  /** A text that names the record, else one that speaks for the whole table. */
  private Optional<Rationale> elsewhere(Proposal table, Draft draft) {
    String sheet = table.area().sheet();
    String name = name(draft);
    String symbol =
        draft
            .place(Field.SYMBOL)
            .flatMap(this::cell)
            .map(cell -> cell.text().strip())
            .orElse(draft.said(Field.SYMBOL));
    return named
        .computeIfAbsent(sheet + "\n" + name + "\n" + symbol, key -> naming(sheet, name, symbol))
        .or(() -> forAll(table));
  }

  private String name(Draft draft) {
    return draft
        .place(Field.QUANTITY)
        .flatMap(this::cell)
        .map(TypedCell::text)
        .flatMap(grammar::read)
        .map(heading -> heading.name())
        .filter(name -> !name.isBlank())
        .orElse(draft.said(Field.QUANTITY));
  }

  private Optional<Rationale> naming(String sheet, String name, String symbol) {
    List<Prose> all = new ArrayList<>(prose.getOrDefault(sheet, List.of()));
    prose.forEach(
        (other, found) -> {
          if (!other.equals(sheet)) {
            all.addAll(found);
          }
        });
    return all.stream()
        .filter(
            text ->
                isReason(text)
                    || text.cell().sheet().equals(sheet)
                    || !hasNumbers(text.cell().sheet()))
        .filter(text -> names(text, name, symbol))
        .findFirst()
        .map(text -> new Rationale(text.cell(), text.text()));
  }

  /** A sheet without numbers holds notes. */
  private boolean hasNumbers(String sheet) {
    return numbered.computeIfAbsent(
        sheet, name -> sheets.get(name).cells().stream().anyMatch(TypedCell::mayBeNumber));
  }

  /** Whether a text on a sheet lists units for its values. */
  public boolean tellsUnits(String sheet) {
    return prose.getOrDefault(sheet, List.of()).stream()
        .filter(text -> grammar.vocabulary().mentions(Notion.UNITS, text.text()))
        .anyMatch(
            text ->
                Arrays.stream(text.text().split("[,;:\\s]+", -1)).filter(grammar::isUnit).count()
                    > 1);
  }

  private boolean isReason(Prose text) {
    return text.labelled() || grammar.vocabulary().mentions(Notion.REASON, text.text());
  }

  /** Whether a text states an uncertainty together with what was measured with. */
  private boolean isOfInstrument(Prose text) {
    return text.text().contains("±")
        && (grammar.vocabulary().mentions(Notion.INSTRUMENT, text.text())
            || grammar.vocabulary().mentions(Notion.OWN_ZERO, text.text()));
  }

  private boolean names(Prose text, String name, String symbol) {
    String words =
        spaced.computeIfAbsent(
            text, found -> " " + BETWEEN.matcher(found.text()).replaceAll(" ").strip() + " ");
    boolean symbolic = !symbol.isBlank() && words.contains(" " + symbol + " ");
    String plain = BETWEEN.matcher(name).replaceAll(" ").strip();
    return symbolic
        || plain.length() > 1
            && words.toLowerCase(Locale.ROOT).contains(plain.toLowerCase(Locale.ROOT));
  }

  /** A labelled text on the same sheet, else one that speaks of uncertainties, else elsewhere. */
  private Optional<Rationale> forAll(Proposal table) {
    List<Prose> here = prose.getOrDefault(table.area().sheet(), List.of());
    Optional<Prose> found =
        here.stream()
            .filter(Prose::labelled)
            .findFirst()
            .or(() -> here.stream().filter(this::isReason).findFirst())
            .or(() -> here.stream().filter(this::isOfInstrument).findFirst())
            .or(() -> here.stream().filter(text -> isBelow(text, table)).findFirst())
            .or(
                () ->
                    prose.values().stream()
                        .flatMap(List::stream)
                        .filter(Prose::labelled)
                        .findFirst());
    return found.map(text -> new Rationale(text.cell(), text.text()));
  }

  /** What is written below the first line of a table or beside it is about the table. */
  private static boolean isBelow(Prose text, Proposal table) {
    return text.written() != Written.AS_COMMENT && text.cell().row() >= table.area().top();
  }
}
