package tenthmark.checker.reading.layout;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.formula.Spreads;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.unit.UnitReader;

/**
 * What letters before symbols say, as in Δx, dR, u or σ: an uncertainty of what stands beside them,
 * or a difference that is measured itself.
 */
final class UncertainMarks {

  private static final Set<String> LONE_MARKS = Set.of("u", "σ", "uc", "u_c");

  private static final String PREFIXES = "duse";

  private final List<Column> columns;
  private final Evaluation evaluation;

  UncertainMarks(List<Column> columns, Evaluation evaluation) {
    this.columns = columns;
    this.evaluation = evaluation;
  }

  /** Whether what a delta stands before is measured in another column. */
  boolean isOfAnother(Column column, Heading delta) {
    boolean named =
        others(column).anyMatch(other -> other.heading().filter(h -> names(h, delta)).isPresent());
    return named || isOfSpread(column) || isSmallBeside(column);
  }

  /** Whether the column right behind is an uncertainty, of this one or of what this one names. */
  boolean hasOwnUncertainty(Column column) {
    return columns.stream()
        .filter(other -> other.place() == column.place() + 1)
        .flatMap(other -> other.heading().stream())
        .anyMatch(
            next ->
                next.mark() == Heading.Mark.SURE
                    && (next.name().isEmpty() || next.can(Role.COMPARISON)));
  }

  private static boolean names(Heading value, Heading uncertain) {
    return value.mark() == Heading.Mark.NONE && Naming.matches(value, uncertain.name());
  }

  /** Whether a column is computed from the scatter of a series. */
  private boolean isOfSpread(Column column) {
    return column.cells().values().stream()
        .anyMatch(cell -> Spreads.isOfSpread(cell.cell(), evaluation));
  }

  /** A delta of another symbol is an uncertainty if it is small beside a value in the same unit. */
  private boolean isSmallBeside(Column delta) {
    return others(delta)
        .filter(other -> other.place() < delta.place() && other.isOfNumbers())
        .filter(other -> other.heading().filter(h -> h.mark() == Heading.Mark.NONE).isPresent())
        .filter(other -> delta.unit().isEmpty() || sameUnit(other.unit(), delta.unit()))
        .filter(delta::isSmallBeside)
        .findAny()
        .isPresent();
  }

  static boolean sameUnit(String one, String other) {
    if (one.equals(other)) {
      return true;
    }
    var first = UnitReader.STANDARD.read(one).known();
    var second = UnitReader.STANDARD.read(other).known();
    return first.isPresent() && second.isPresent() && first.get().isSameAs(second.get());
  }

  /** A letter before the symbol of another column, as in {@code dR}, {@code sx} or {@code uT}. */
  boolean isPrefixed(Column column, Heading heading) {
    String name = heading.name();
    return name.length() >= 2
        && name.length() <= 8
        && PREFIXES.indexOf(name.toLowerCase(Locale.ROOT).charAt(0)) >= 0
        && isSymbolOfAnother(column, name.substring(1).strip());
  }

  /** A letter for uncertainties, alone over numbers that are small beside values. */
  boolean isLoneMark(Column column, Heading heading) {
    return LONE_MARKS.contains(heading.name())
        && !isNamedByDelta(column, heading)
        && isSmallBeside(column);
  }

  /** What an uncertainty beside it has the symbol of is a value, whatever else stands above it. */
  boolean isNamedByDelta(Column column, Heading heading) {
    return !heading.symbol().isEmpty()
        && others(column)
            .flatMap(other -> other.heading().stream())
            .anyMatch(
                other ->
                    other.mark() == Heading.Mark.NONE
                        ? isPrefixed(other.name(), heading)
                        : other.symbol().equals(heading.symbol()));
  }

  private static boolean isPrefixed(String name, Heading heading) {
    return name.length() == heading.symbol().length() + 1
        && PREFIXES.indexOf(name.toLowerCase(Locale.ROOT).charAt(0)) >= 0
        && name.substring(1).equals(heading.symbol());
  }

  private boolean isSymbolOfAnother(Column column, String symbol) {
    return others(column)
        .flatMap(other -> other.heading().stream())
        .filter(heading -> heading.roles().isEmpty())
        .anyMatch(heading -> heading.symbol().equals(symbol) || heading.name().equals(symbol));
  }

  private Stream<Column> others(Column column) {
    return columns.stream().filter(other -> other.place() != column.place());
  }
}
