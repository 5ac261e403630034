package tenthmark.checker.reading.formula;

import java.util.List;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.catalogue.FunctionRole;

/** Tells what is computed from the scatter of a series. */
public final class Spreads {

  private Spreads() {}

  /**
   * Whether a formula makes the uncertainty of a mean out of a standard deviation, its own or that
   * of a cell, or half the range of a series.
   */
  public static boolean isOfSpread(Cell cell, Evaluation evaluation) {
    List<String> functions = NativeFunctions.of(cell);
    if (functions.stream().anyMatch(NativeFunctions.MEANS::contains)) {
      return false;
    }
    boolean own = functions.stream().anyMatch(NativeFunctions.SPREADS::contains);
    boolean root = functions.contains("SQRT");
    boolean halfRange = functions.contains("MAX") && functions.contains("MIN");
    return own && root
        || halfRange
        || functions.stream().anyMatch(NativeFunctions.ours(FunctionRole.REPEAT)::contains)
        || root
            && evaluation.precedents(cell).stream()
                .anyMatch(
                    behind ->
                        NativeFunctions.of(behind).stream()
                            .anyMatch(NativeFunctions.SPREADS::contains));
  }
}
