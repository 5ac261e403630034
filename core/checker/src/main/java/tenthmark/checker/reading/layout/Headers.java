package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.Lines;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Role;
import tenthmark.measurement.formula.CellAddress;

/**
 * Finds headings in a block: lines of texts that numbers follow. Headings that stand in several
 * lines, merged or one above the other, are put together; so are the units in a line of their own.
 */
final class Headers {

  private static final int MOST_LINES = 3;
  private static final int FEWEST_IN_A_COLUMN = 2;
  private static final int NUMBERS_WITHIN = 4;
  private static final int MOST_WORDS_ALONE = 4;

  /** So many headings of parts make a table before there is any number. */
  private static final int TELLING_ALONE = 3;

  private final Lines lines;
  private final HeadingGrammar grammar;

  Headers(Lines lines, HeadingGrammar grammar) {
    this.lines = lines;
    this.grammar = grammar;
  }

  List<Header> find() {
    return lines.direction() == Direction.ROWS ? inRows() : inColumns();
  }

  private List<Header> inRows() {
    List<Header> found = new ArrayList<>();
    Integer previous = null;
    for (int line : lines.all().keySet()) {
      boolean headingsBefore = previous != null && isOfHeadings(previous);
      if (headingsBefore && (!isOfHeadings(line) || isData(line, previous))) {
        stacked(previous)
            .filter(header -> isOverNumbers(header) || header.telling() >= TELLING_ALONE)
            .ifPresent(found::add);
      }
      previous = line;
    }
    return found;
  }

  /** Whether numbers, or texts in their place, stand beneath one of the headings. */
  private boolean isOverNumbers(Header header) {
    int seen = 0;
    for (NavigableMap<Integer, TypedCell> line :
        lines.all().tailMap(header.last(), false).values()) {
      boolean number =
          header.headings().keySet().stream()
              .map(line::get)
              .anyMatch(
                  cell -> cell != null && (cell.mayBeNumber() || grammar.isAmount(cell.text())));
      if (number) {
        return true;
      }
      if (++seen == NUMBERS_WITHIN) {
        return false;
      }
    }
    return false;
  }

  /** Whether a line holds headings and nothing else; a line of numbers in order may head trials. */
  private boolean isOfHeadings(int line) {
    NavigableMap<Integer, TypedCell> cells = lines.line(line);
    boolean texts = cells.values().stream().allMatch(TypedCell::isText);
    return texts
        ? cells.values().stream().anyMatch(cell -> heading(cell).isPresent())
            && (cells.size() > 1 || isShort(cells.firstEntry().getValue().text()))
            && cells.values().stream().noneMatch(cell -> grammar.isAmount(cell.text()))
            && !isReason(cells)
        : isOfTrials(cells);
  }

  private static boolean isShort(String text) {
    return text.strip().split("\\s+", -1).length <= MOST_WORDS_ALONE;
  }

  /** A label of rationales with a text beside it stands between records, not above them. */
  private boolean isReason(NavigableMap<Integer, TypedCell> cells) {
    return cells.size() <= 2
        && heading(cells.firstEntry().getValue()).filter(h -> h.can(Role.RATIONALE)).isPresent();
  }

  /** A text and the numbers 1, 2, 3 beside it. */
  private boolean isOfTrials(NavigableMap<Integer, TypedCell> cells) {
    List<TypedCell> numbers = cells.values().stream().filter(TypedCell::mayBeNumber).toList();
    if (numbers.size() < 2
        || !cells.firstEntry().getValue().isText()
        || heading(cells.firstEntry().getValue()).filter(h -> h.can(Role.INDEX)).isEmpty()) {
      return false;
    }
    for (int i = 0; i < numbers.size(); i++) {
      if (!numbers.get(i).isTyped() || numbers.get(i).number() != i + 1) {
        return false;
      }
    }
    return true;
  }

  private Optional<Heading> heading(TypedCell cell) {
    return cell.isText() && !cell.isOfMatrix() ? grammar.read(cell.text()) : Optional.empty();
  }

  /** The headings that end in a line, with those above that belong to them. */
  private Optional<Header> stacked(int last) {
    List<Integer> stack = new ArrayList<>(List.of(last));
    int line = last - 1;
    while (stack.size() < MOST_LINES
        && lines.all().containsKey(line)
        && isOfHeadings(line)
        && !isTitle(line, stack.get(0))) {
      stack.add(0, line);
      line--;
    }
    while (stack.size() > 1 && isData(stack.get(stack.size() - 1), stack.get(stack.size() - 2))) {
      stack.remove(stack.size() - 1);
    }
    NavigableMap<Integer, Heading> headings = new TreeMap<>();
    Map<Integer, CellAddress> cells = new HashMap<>();
    for (int each : stack) {
      compose(each, headings, cells, each != stack.get(0) && isOfUnits(each));
    }
    return headings.isEmpty()
        ? Optional.empty()
        : Optional.of(new Header(stack.get(0), stack.get(stack.size() - 1), headings, cells));
  }

  /** One text alone over several headings, unless it is merged over some of them. */
  private boolean isTitle(int line, int below) {
    NavigableMap<Integer, TypedCell> cells = lines.line(line);
    if (cells.size() > 1) {
      return false;
    }
    TypedCell only = cells.firstEntry().getValue();
    int covered = lines.covers(only);
    return covered == 1
        ? lines.line(below).size() > 1 || heading(only).isEmpty()
        : covered >= lines.line(below).size();
  }

  /** A line of texts that say less than the line above them is a record that waits for numbers. */
  private boolean isData(int line, int above) {
    return !isOfUnits(line) && telling(line) == 0 && telling(above) > 1 && !isUnderOne(line, above);
  }

  /** Whether one heading is merged across several texts of the line beneath. */
  private boolean isUnderOne(int line, int above) {
    return lines.line(above).entrySet().stream()
        .anyMatch(
            heading -> {
              int covered = lines.covers(heading.getValue());
              int first = heading.getKey();
              return covered > 1
                  && lines.line(line).subMap(first, true, first + covered - 1, true).size() > 1;
            });
  }

  private long telling(int line) {
    return lines.line(line).values().stream()
        .flatMap(cell -> heading(cell).stream())
        .filter(Heading::isTelling)
        .count();
  }

  private boolean isOfUnits(int line) {
    return lines.line(line).values().stream().allMatch(cell -> isUnitOrNothing(cell.text()));
  }

  private boolean isUnitOrNothing(String text) {
    return grammar.isUnit(text) || text.length() == 1 && !Character.isLetterOrDigit(text.charAt(0));
  }

  /** A dash in place of a unit says that there is none. */
  private String unit(String text) {
    return grammar.isUnit(text) ? HeadingGrammar.bare(text) : "1";
  }

  /** Adds a line of headings below those that are there. */
  private void compose(
      int line,
      NavigableMap<Integer, Heading> headings,
      Map<Integer, CellAddress> cells,
      boolean units) {
    NavigableMap<Integer, Heading> above = new TreeMap<>(headings);
    Map<Integer, Integer> reach = reach(line - 1, above);
    lines
        .line(line)
        .forEach(
            (place, cell) -> {
              Optional<Heading> over =
                  Optional.ofNullable(above.get(place))
                      .or(() -> Optional.ofNullable(reach.get(place)).map(above::get));
              if (units) {
                over.filter(h -> above.containsKey(place))
                    .ifPresent(h -> headings.put(place, h.in(unit(cell.text()))));
                return;
              }
              Optional<Heading> own =
                  cell.isText()
                      ? grammar.read(cell.text())
                      : grammar.read("#" + (int) cell.number());
              own.ifPresent(
                  found -> {
                    headings.put(place, over.map(found::under).orElse(found));
                    cells.put(place, cell.address());
                  });
            });
  }

  /** The heading over each place that it is merged across, or stands left of with nothing over. */
  private Map<Integer, Integer> reach(int line, NavigableMap<Integer, Heading> above) {
    Map<Integer, Integer> reach = new HashMap<>();
    if (above.isEmpty()) {
      return reach;
    }
    lines
        .line(line)
        .forEach(
            (place, cell) -> {
              int covered = lines.covers(cell);
              Integer next = lines.line(line).higherKey(place);
              int right = covered > 1 ? place + covered - 1 : next == null ? place + 1 : next - 1;
              for (int i = place; i <= right; i++) {
                reach.put(i, place);
              }
            });
    return reach;
  }

  /** Labels one below the other with numbers beside them; a blank or a sentence parts them. */
  private List<Header> inColumns() {
    List<Header> found = new ArrayList<>();
    for (int line : lines.all().keySet()) {
      NavigableMap<Integer, Heading> headings = new TreeMap<>();
      Map<Integer, CellAddress> cells = new HashMap<>();
      int next = -1;
      for (TypedCell cell : lines.line(line).values()) {
        int place = lines.direction().place(cell.address());
        Optional<Heading> heading = heading(cell);
        if (place != next || heading.isEmpty()) {
          add(line, headings, cells, found);
        }
        if (heading.isPresent()) {
          headings.put(place, heading.get());
          cells.put(place, cell.address());
        }
        next = place + 1;
      }
      add(line, headings, cells, found);
    }
    return found;
  }

  private void add(
      int line,
      NavigableMap<Integer, Heading> headings,
      Map<Integer, CellAddress> cells,
      List<Header> found) {
    long beside = headings.keySet().stream().filter(place -> hasNumberAfter(line, place)).count();
    if (headings.size() >= FEWEST_IN_A_COLUMN && beside > 0) {
      int last = isOfUnits(line + 1, headings) ? line + 1 : line;
      NavigableMap<Integer, Heading> whole = new TreeMap<>(headings);
      headings.forEach(
          (place, heading) ->
              over(line, place, heading)
                  .ifPresent(quantity -> whole.put(place, heading.under(quantity))));
      if (last > line) {
        headings.forEach(
            (place, heading) ->
                lines
                    .at(line + 1, place)
                    .filter(unit -> grammar.isUnit(unit.text()))
                    .ifPresent(
                        unit -> whole.put(place, heading.in(HeadingGrammar.bare(unit.text())))));
      }
      found.add(new Header(line, last, whole, cells));
    }
    headings.clear();
    cells.clear();
  }

  /** The quantity to the left of a label that says no more than value or uncertainty. */
  private Optional<Heading> over(int line, int place, Heading heading) {
    boolean merelyRole =
        heading.name().isEmpty()
            && heading.unit().isEmpty()
            && (heading.can(Role.VALUE) || heading.can(Role.UNCERTAINTY));
    if (!merelyRole) {
      return Optional.empty();
    }
    for (int above = place; above >= 0 && lines.at(line, above).isPresent(); above--) {
      Optional<TypedCell> left = lines.at(line - 1, above);
      if (left.isPresent()) {
        return heading(left.get()).filter(Heading::isOfQuantity);
      }
    }
    return Optional.empty();
  }

  private boolean hasNumberAfter(int line, int place) {
    for (int next = line + 1; next <= line + NUMBERS_WITHIN; next++) {
      if (lines.at(next, place).filter(TypedCell::mayBeNumber).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private boolean isOfUnits(int line, NavigableMap<Integer, Heading> headings) {
    List<TypedCell> there =
        headings.keySet().stream().flatMap(place -> lines.at(line, place).stream()).toList();
    return there.size() > 1
        && there.stream().allMatch(cell -> cell.isText() && isUnitOrNothing(cell.text()))
        && lines.all().higherKey(line) != null;
  }
}
