package tenthmark.checker.evaluation;

import java.util.List;
import java.util.Set;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;

/** What the functions that every spreadsheet has are for, as far as the checker asks. */
public final class NativeFunctions {

  /** Sums. */
  public static final Set<String> SUMS = Set.of("SUM", "SUMSQ", "LAB_TOTAL");

  /** Means of a series. */
  public static final Set<String> MEANS =
      Set.of("AVERAGE", "AVERAGEA", "MEDIAN", "TRIMMEAN", "LAB_WEIGHTED");

  /** Scatter of a series. */
  public static final Set<String> SPREADS =
      Set.of(
          "STDEV",
          "STDEV.S",
          "STDEVA",
          "STDEV.P",
          "STDEVP",
          "VAR",
          "VAR.S",
          "VAR.P",
          "VARP",
          "AVEDEV",
          "DEVSQ",
          "STEYX",
          "LAB_REPEATS");

  /** Numbers of values. */
  public static final Set<String> COUNTS = Set.of("COUNT", "COUNTA", "ROWS");

  /** Lines through points. */
  public static final Set<String> LINES =
      Set.of(
          "SLOPE",
          "INTERCEPT",
          "LINEST",
          "LAB_SLOPE",
          "LAB_INTERCEPT",
          "LAB_LINE",
          "LAB_STEEPSHALLOW",
          "LAB_CURVE");

  /** How well a line fits, and other numbers about scatter. */
  public static final Set<String> STATISTICS =
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
          "STEYX",
          "LAB_STRAYS",
          "LAB_FREEDOM",
          "LAB_COVER",
          "LAB_GAP");

  private static final Set<String> PICKING = Set.of("INDEX", "ABS", "ROUND", "IFERROR");

  private NativeFunctions() {}

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
