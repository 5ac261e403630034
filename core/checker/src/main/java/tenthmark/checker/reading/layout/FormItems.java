package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Role;

/** Takes the rows of a block apart into labels with what stands behind them. */
final class FormItems {

  private final TypedSheet sheet;
  private final List<TypedCell> row;
  private final HeadingGrammar grammar;
  private final Map<Integer, Heading> sections;
  private final List<FormItem> items = new ArrayList<>();
  private int at;

  private FormItems(
      TypedSheet sheet,
      List<TypedCell> row,
      HeadingGrammar grammar,
      Map<Integer, Heading> sections) {
    this.sheet = sheet;
    this.row = row;
    this.grammar = grammar;
    this.sections = sections;
  }

  static List<FormItem> in(Block block, Surroundings surroundings) {
    List<FormItem> items = new ArrayList<>();
    Map<Integer, Heading> sections = new HashMap<>();
    for (List<TypedCell> row : rows(block)) {
      items.addAll(new FormItems(block.sheet(), row, surroundings.grammar(), sections).read());
    }
    return items;
  }

  /** The rows of a block; one that begins with a number has the label that stands above it. */
  private static List<List<TypedCell>> rows(Block block) {
    Map<Integer, List<TypedCell>> rows = new LinkedHashMap<>();
    block
        .cells()
        .forEach(
            cell ->
                rows.computeIfAbsent(cell.address().row(), none -> new ArrayList<>()).add(cell));
    List<List<TypedCell>> labelled = new ArrayList<>();
    rows.forEach(
        (number, row) -> {
          List<TypedCell> whole = new ArrayList<>(row);
          labelAbove(number, rows)
              .ifPresent(
                  label -> {
                    whole.add(0, label);
                    reasonBelow(number, rows).ifPresent(whole::add);
                  });
          labelled.add(whole);
        });
    return labelled;
  }

  /**
   * A text alone in the row above a number that no other follows below: in a form that is written
   * downwards, or a question above its answer.
   */
  private static Optional<TypedCell> labelAbove(int row, Map<Integer, List<TypedCell>> rows) {
    TypedCell number = rows.get(row).get(0);
    List<TypedCell> above = rows.getOrDefault(row - 1, List.of());
    if (number.isText() || above.size() != 1 || !above.get(0).isText()) {
      return Optional.empty();
    }
    int column = number.address().column();
    boolean series =
        rows.getOrDefault(row + 1, List.of()).stream()
            .anyMatch(cell -> cell.address().column() == column && cell.mayBeNumber());
    return series || above.get(0).address().column() > column
        ? Optional.empty()
        : Optional.of(above.get(0));
  }

  /** A text alone below such a number that is no label of another. */
  private static Optional<TypedCell> reasonBelow(int row, Map<Integer, List<TypedCell>> rows) {
    List<TypedCell> below = rows.getOrDefault(row + 1, List.of());
    boolean label =
        rows.getOrDefault(row + 2, List.of()).stream().limit(1).anyMatch(cell -> !cell.isText());
    return below.size() == 1 && below.get(0).isText() && !label
        ? Optional.of(below.get(0))
        : Optional.empty();
  }

  private List<FormItem> read() {
    while (at < row.size()) {
      item();
    }
    return items;
  }

  /** A label, one value, perhaps a sign and an uncertainty, a unit, a reason. */
  private void item() {
    TypedCell label = row.get(at++);
    Optional<Heading> heading =
        label.isText() && !label.isOfMatrix() && !isMerelyUnit(label)
            ? grammar.read(label.text()).or(() -> sentence(label))
            : Optional.empty();
    if (heading.isEmpty()) {
      return;
    }
    if (at >= row.size() || row.get(at).isText() && !Forms.isUnit(row.get(at), grammar)) {
      section(label, heading.get());
    }
    if (at >= row.size()) {
      return;
    }
    Optional<TypedCell> before = unit();
    if (at >= row.size() || !row.get(at).mayBeNumber() || row.get(at).isOfMatrix()) {
      return;
    }
    TypedCell value = row.get(at++);
    Optional<TypedCell> behind = unit();
    boolean signed =
        at < row.size() && (Forms.isSign(row.get(at)) || Shown.isSigned(sheet, row.get(at)))
            || behind.filter(this::leadsOn).isPresent();
    boolean size = heading.get().mark() == Heading.Mark.SURE && heading.get().name().isEmpty();
    Optional<TypedCell> uncertainty =
        size ? Optional.empty() : uncertainty(value, heading.get(), signed);
    if (uncertainty.isEmpty() && at < row.size() && row.get(at).mayBeNumber()) {
      // several numbers behind one label are a series or a row of a table
      while (at < row.size() && row.get(at).mayBeNumber()) {
        at++;
      }
      return;
    }
    Optional<TypedCell> unit = unit().or(() -> behind).or(() -> before);
    items.add(
        new FormItem(
            label,
            within(label, heading.get()),
            value,
            uncertainty,
            signed,
            unit,
            unit.flatMap(cell -> grammar.leadingUnit(cell.text()))
                .or(() -> Shown.unit(sheet, value.address(), grammar))
                .orElse(""),
            reason()));
  }

  /** A sentence before a value with its uncertainty names it as a label does. */
  private Optional<Heading> sentence(TypedCell label) {
    boolean result =
        at + 2 < row.size()
            && row.get(at).mayBeNumber()
            && Forms.isSign(row.get(at + 1))
            && row.get(at + 2).mayBeNumber();
    return result && !grammar.isAmount(label.text())
        ? Optional.of(Heading.of(label.text()))
        : Optional.empty();
  }

  /** A heading of a section, with nothing behind it, speaks for the labels below it. */
  private void section(TypedCell label, Heading heading) {
    boolean uncertain =
        heading.mark() == Heading.Mark.SURE
            && heading.name().isEmpty()
            && heading.can(Role.UNCERTAINTY);
    if (uncertain) {
      sections.put(label.address().column(), heading);
    } else {
      sections.remove(label.address().column());
    }
  }

  private Heading within(TypedCell label, Heading heading) {
    Heading section = sections.get(label.address().column());
    return section != null && heading.roles().isEmpty() ? heading.under(section) : heading;
  }

  private boolean isMerelyUnit(TypedCell cell) {
    return !items.isEmpty() && grammar.isUnit(cell.text());
  }

  private Optional<TypedCell> unit() {
    return at < row.size()
            && row.get(at).isText()
            && grammar.leadingUnit(row.get(at).text()).isPresent()
        ? Optional.of(row.get(at++))
        : Optional.empty();
  }

  /** Whether words behind a unit lead on to a number that is an uncertainty. */
  private boolean leadsOn(TypedCell unit) {
    String rest = unit.text().substring(grammar.leadingUnit(unit.text()).orElse("").length());
    return rest.length() > 1 && !rest.contains("(") && at < row.size() && row.get(at).mayBeNumber();
  }

  private Optional<TypedCell> uncertainty(TypedCell value, Heading heading, boolean led) {
    if (at + 1 < row.size() && Forms.isSign(row.get(at)) && row.get(at + 1).mayBeNumber()) {
      at += 2;
      return Optional.of(row.get(at - 1));
    }
    if (led && at < row.size() && row.get(at).isNumber() && isSmall(row.get(at), value)) {
      return Optional.of(row.get(at++));
    }
    boolean alone =
        at < row.size()
            && row.get(at).isNumber()
            && (at + 1 >= row.size() || row.get(at + 1).isText())
            && (heading.pair() || at + 1 < row.size() && Forms.isUnit(row.get(at + 1), grammar))
            && isSmall(row.get(at), value);
    return alone ? Optional.of(row.get(at++)) : Optional.empty();
  }

  private static boolean isSmall(TypedCell uncertainty, TypedCell value) {
    return value.isNumber()
        && uncertainty.number() > 0
        && uncertainty.number() < Math.abs(value.number()) / 2;
  }

  /** A text that no number follows. */
  private Optional<TypedCell> reason() {
    boolean text =
        at < row.size()
            && row.get(at).isText()
            && !Forms.isSign(row.get(at))
            && (at + 1 >= row.size() || row.get(at + 1).isText())
            && grammar.read(row.get(at).text()).filter(h -> h.can(Role.UNCERTAINTY)).isEmpty();
    return text ? Optional.of(row.get(at++)) : Optional.empty();
  }
}
