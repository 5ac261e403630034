package tenthmark.checker.reading.layout;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.formula.CellRange;

/** Tells which number of a line through points a formula gives. */
final class LineFormulas {

  /** A number of a line. */
  enum Part {
    NONE,
    SLOPE,
    INTERCEPT,
    SLOPE_UNCERTAINTY,
    INTERCEPT_UNCERTAINTY,
    /** How well the line fits. */
    STATISTIC;

    boolean isUncertainty() {
      return this == SLOPE_UNCERTAINTY || this == INTERCEPT_UNCERTAINTY;
    }

    Part of() {
      return this == SLOPE_UNCERTAINTY ? SLOPE : INTERCEPT;
    }
  }

  private static final Pattern PICKED =
      Pattern.compile(
          "INDEX\\(\\s*(?:LINEST|"
              + ours(FunctionRole.LINE)
              + ")\\(.*\\)\\s*,\\s*(?<row>\\d+)?\\s*(?:,\\s*(?<column>\\d+)\\s*)?\\)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern SLOPE =
      Pattern.compile(
          "(?:SLOPE|LINEST|" + ours(FunctionRole.SLOPE) + ")\\([^()]*\\)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern INTERCEPT =
      Pattern.compile(
          "(?:INTERCEPT|" + ours(FunctionRole.INTERCEPT) + ")\\([^()]*\\)",
          Pattern.CASE_INSENSITIVE);

  private final Evaluation evaluation;

  LineFormulas(Evaluation evaluation) {
    this.evaluation = evaluation;
  }

  Part part(TypedCell cell) {
    return cell.formula().map(formula -> part(formula.text())).orElse(Part.NONE);
  }

  static Part part(String formula) {
    String text = formula.strip();
    Matcher picked = PICKED.matcher(text);
    if (picked.matches()) {
      int row = number(picked.group("row"));
      return picked.group("column") == null
          ? picked(1, row)
          : picked(row, number(picked.group("column")));
    }
    if (SLOPE.matcher(text).matches()) {
      return Part.SLOPE;
    }
    if (INTERCEPT.matcher(text).matches()) {
      return Part.INTERCEPT;
    }
    String called = text.substring(0, Math.max(0, text.indexOf('('))).toUpperCase(Locale.ROOT);
    return switch (NativeFunctions.role(called).orElse(FunctionRole.OTHER)) {
      case SLOPE_UNCERTAINTY -> Part.SLOPE_UNCERTAINTY;
      case INTERCEPT_UNCERTAINTY -> Part.INTERCEPT_UNCERTAINTY;
      default -> Part.NONE;
    };
  }

  private static String ours(FunctionRole role) {
    return String.join("|", NativeFunctions.ours(role));
  }

  /** One index alone counts along the first row. */
  private static int number(String digits) {
    return digits == null ? 1 : Integer.parseInt(digits);
  }

  private static Part picked(int row, int column) {
    return switch (row) {
      case 1 -> column == 1 ? Part.SLOPE : Part.INTERCEPT;
      case 2 -> column == 1 ? Part.SLOPE_UNCERTAINTY : Part.INTERCEPT_UNCERTAINTY;
      default -> Part.STATISTIC;
    };
  }

  /** Whether two cells are computed from the same points. */
  boolean sameLine(TypedCell one, TypedCell other) {
    Set<CellRange> first = Set.copyOf(evaluation.references(one.cell()));
    return first.containsAll(evaluation.references(other.cell()));
  }
}
