package tenthmark.checker.reading.layout;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;

/** Tells totals: formulas that add cells up, straight or by their squares. */
final class Sums {

  private static final Set<String> FUNCTIONS =
      Set.of("SUM", "SQRT", "SUMSQ", "LAB_TOTAL", "ROUND", "ROUNDUP");
  private static final Pattern PRODUCT = Pattern.compile("[*/]|(?<![(,])-");

  private Sums() {}

  static boolean isSum(Cell cell) {
    if (!(cell.content() instanceof Content.Formula formula)) {
      return false;
    }
    List<String> functions = NativeFunctions.of(cell);
    boolean adds =
        formula.text().contains("+") || functions.stream().anyMatch(NativeFunctions.SUMS::contains);
    return adds && FUNCTIONS.containsAll(functions) && !PRODUCT.matcher(formula.text()).find();
  }
}
