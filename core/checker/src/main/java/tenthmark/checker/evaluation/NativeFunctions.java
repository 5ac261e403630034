package tenthmark.checker.evaluation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.WorksheetFunction;

/** What functions are for: those that every spreadsheet has, and those of ours with such a role. */
public final class NativeFunctions {

  private static final Map<String, FunctionRole> OURS =
      Catalogue.load().functions().stream()
          .map(WorksheetFunction::declaration)
          .collect(Collectors.toMap(Declaration::displayName, Declaration::role));

  /** Sums. */
  public static final Set<String> SUMS = with(Set.of("SUM", "SUMSQ"), FunctionRole.TOTAL);

  /** Sums, and what may stand around them in a total. */
  public static final Set<String> TOTALS = both(SUMS, Set.of("SQRT", "ROUND", "ROUNDUP"));

  /** Means of a series. */
  public static final Set<String> MEANS =
      with(Set.of("AVERAGE", "AVERAGEA", "MEDIAN", "TRIMMEAN"), FunctionRole.MEAN);

  /** Scatter of a series. */
  public static final Set<String> SPREADS =
      with(
          Set.of(
              "STDEV", "STDEV.S", "STDEVA", "STDEV.P", "STDEVP", "VAR", "VAR.S", "VAR.P", "VARP",
              "AVEDEV", "DEVSQ", "STEYX"),
          FunctionRole.REPEAT);

  /** Numbers of values. */
  public static final Set<String> COUNTS = Set.of("COUNT", "COUNTA", "ROWS");

  /** Functions that pass over the texts in a range, and those that may stand around them. */
  public static final Set<String> PASSING_OVER_TEXTS =
      Set.of(
          "SUM", "SUMSQ", "AVERAGE", "MEDIAN", "MIN", "MAX", "STDEV", "STDEV.S", "STDEV.P",
          "STDEVP", "SQRT", "ROUND", "ABS");

  /** Lines through points. */
  public static final Set<String> LINES =
      with(
          Set.of("SLOPE", "INTERCEPT", "LINEST"),
          FunctionRole.SLOPE,
          FunctionRole.INTERCEPT,
          FunctionRole.LINE,
          FunctionRole.FIT);

  /** How well a line fits, and other numbers about scatter. */
  public static final Set<String> STATISTICS =
      with(
          Set.of(
              "CORREL",
              "RSQ",
              "PEARSON",
              "MIN",
              "MAX",
              "MEDIAN",
              "QUARTILE",
              "SUMSQ",
              "DEVSQ",
              "STEYX"),
          FunctionRole.STATISTIC,
          FunctionRole.COMPARISON);

  /** Functions by which an uncertainty is found in other ways than by carrying half-widths. */
  public static final Set<String> OTHER_METHODS =
      both(
          with(
              Set.of("LINEST", "RSQ", "CORREL"),
              FunctionRole.STANDARD,
              FunctionRole.SIMULATED,
              FunctionRole.MEAN,
              FunctionRole.LINE,
              FunctionRole.SLOPE_UNCERTAINTY,
              FunctionRole.INTERCEPT_UNCERTAINTY,
              FunctionRole.POINT_OF_LINE,
              FunctionRole.FIT,
              FunctionRole.STATISTIC),
          SPREADS);

  private static final Set<String> PICKING = Set.of("INDEX", "ABS", "ROUND", "IFERROR");

  private NativeFunctions() {}

  /** The functions of ours that have one of some roles, by display name. */
  public static Set<String> ours(FunctionRole... roles) {
    Set<FunctionRole> wanted = Set.of(roles);
    return OURS.entrySet().stream()
        .filter(function -> wanted.contains(function.getValue()))
        .map(Map.Entry::getKey)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The role of a function of ours by its display name; none for any other. */
  public static Optional<FunctionRole> role(String function) {
    return Optional.ofNullable(OURS.get(function));
  }

  private static Set<String> with(Set<String> natives, FunctionRole... roles) {
    return both(natives, ours(roles));
  }

  private static Set<String> both(Set<String> some, Set<String> others) {
    return Stream.concat(some.stream(), others.stream()).collect(Collectors.toUnmodifiableSet());
  }

  /** The functions that a cell's formula calls, in order. */
  public static List<String> of(Cell cell) {
    return cell.content() instanceof Content.Formula formula ? formula.functions() : List.of();
  }

  /** Whether a cell is nothing but the slope or intercept of a line. */
  public static boolean isOfLine(Cell cell) {
    if (!(cell.content() instanceof Content.Formula formula)) {
      return false;
    }
    String text = formula.text().strip();
    List<String> functions = formula.functions();
    int first = 0;
    while (first < functions.size() && PICKING.contains(functions.get(first))) {
      first++;
    }
    return first < functions.size()
        && LINES.contains(functions.get(first))
        && text.endsWith(")")
        && startsWithFunction(text, functions.get(0))
        && closesAtEnd(text);
  }

  private static boolean startsWithFunction(String text, String function) {
    return text.regionMatches(true, 0, function, 0, function.length());
  }

  private static boolean closesAtEnd(String text) {
    int depth = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (depth == 0 && c == ')' && i < text.length() - 1) {
        return false;
      }
    }
    return true;
  }
}
