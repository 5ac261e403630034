package tenthmark.checker.reading.formula;

import java.util.List;
import java.util.regex.Pattern;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;

/** Tells totals: formulas that add cells up, straight or by their squares. */
public final class Sums {

  private static final Pattern PRODUCT = Pattern.compile("[*/]|(?<![(,])-");

  private static final Pattern REFERENCE =
      Pattern.compile("(?:(?:'[^']+'|[\\p{L}\\p{N}_.]+)!)?\\$?[A-Z]{1,3}\\$?\\d+");

  private Sums() {}

  /** Whether a formula repeats another cell and nothing else. */
  public static boolean isMerelyReference(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        && REFERENCE.matcher(formula.text().strip()).matches();
  }

  /** Whether a formula adds cells up and does nothing else with them. */
  public static boolean isSum(Cell cell) {
    if (!(cell.content() instanceof Content.Formula formula)) {
      return false;
    }
    List<String> functions = NativeFunctions.of(cell);
    boolean adds =
        formula.text().contains("+") || functions.stream().anyMatch(NativeFunctions.SUMS::contains);
    boolean root = functions.contains("SQRT");
    boolean squares = formula.text().contains("^2") || functions.contains("SUMSQ");
    return adds
        && root == squares
        && NativeFunctions.TOTALS.containsAll(functions)
        && !PRODUCT.matcher(formula.text()).find();
  }
}
