package tenthmark.checker.evaluation;

import java.util.Optional;
import java.util.regex.Pattern;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Value;

/**
 * The results that the program which saved a file stored with its formulas, beside those that
 * recalculation gives.
 */
public final class StoredResults {

  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");

  private static final Value UNKNOWN_NAME = new Value.Fault("#NAME?");

  /** What Calc gives for each call where Java is missing, and elsewhere for some bad arguments. */
  private static final Value PARAMETER_ERROR = new Value.Fault("Err:504");

  private static final double SAME = 1e-9;
  private static final double NEAR_ZERO = 1e-12;

  private final Evaluation evaluation;

  /** The results that were stored in a workbook. */
  public StoredResults(Evaluation evaluation) {
    this.evaluation = evaluation;
  }

  /** Whether the stored result is another than the one calculated. */
  public boolean isStale(Cell cell) {
    Optional<Value> stored = Evaluation.stored(cell.content());
    return stored.isPresent()
        && !stored.get().equals(UNKNOWN_NAME)
        && !evaluation.changesByItself(cell.address())
        && evaluation.at(cell.address()) instanceof Outcome.Known known
        && !(known.value() instanceof Value.Fault)
        && !same(stored.get(), known.value())
        && !evaluation.followsError(cell)
        && !explainsACell(cell);
  }

  /** Whether a program stored the result that could not call the LAB functions behind it. */
  public boolean isWithoutExtension(Cell cell) {
    Content.Formula formula = (Content.Formula) cell.content();
    Optional<Value> stored = Evaluation.stored(formula);
    return formula.callsLabInLowerCase()
        || evaluation.dependsOnLab(cell.address())
            && (stored.filter(UNKNOWN_NAME::equals).isPresent()
                || stored.filter(PARAMETER_ERROR::equals).isPresent()
                    && evaluation.number(cell.address()).isPresent()
                    && !evaluation.followsError(cell));
  }

  /** An explanation says what the student's office shows, which has errors under other names. */
  private boolean explainsACell(Cell cell) {
    return evaluation.calls(cell).stream().anyMatch(call -> call.is(FunctionRole.EXPLANATION));
  }

  private static boolean same(Value stored, Value calculated) {
    if (stored instanceof Value.Numeric one && calculated instanceof Value.Numeric other) {
      double larger = Math.max(Math.abs(one.number()), Math.abs(other.number()));
      return Math.abs(one.number() - other.number()) <= Math.max(SAME * larger, NEAR_ZERO);
    }
    return stored.equals(calculated)
        || stored instanceof Value.Text one
            && calculated instanceof Value.Text other
            && withPoints(one.text()).equals(withPoints(other.text()));
  }

  /** Calc joins a number to a text with the decimal sign of the student's office. */
  private static String withPoints(String text) {
    return DECIMAL_COMMA.matcher(text).replaceAll(".");
  }
}
