package tenthmark.checker.evaluation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.formula.ptg.ControlPtg;
import org.apache.poi.ss.formula.ptg.OperationPtg;
import org.apache.poi.ss.formula.ptg.PowerPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.UnaryMinusPtg;
import org.apache.poi.ss.formula.ptg.UnaryPlusPtg;

/**
 * Puts a sign before a power where spreadsheets put it: {@code -2^2} is 4 in Calc and Excel,
 * because the sign binds tighter, while POI's parser makes it -4. Parentheses keep a token of their
 * own, so {@code -(2^2)} can be told from it.
 */
final class Precedence {

  private final List<Ptg> tokens;

  private Precedence(Ptg[] tokens) {
    this.tokens = new ArrayList<>(Arrays.asList(tokens));
  }

  static Ptg[] corrected(Ptg[] tokens) {
    Precedence precedence = new Precedence(tokens);
    for (int i = 1; i < tokens.length; i++) {
      if (isSign(precedence.tokens.get(i)) && precedence.tokens.get(i - 1) instanceof PowerPtg) {
        precedence.moveToBase(i);
      }
    }
    return precedence.tokens.toArray(Ptg[]::new);
  }

  private static boolean isSign(Ptg token) {
    return token instanceof UnaryMinusPtg || token instanceof UnaryPlusPtg;
  }

  /** Moves a sign from behind a power to behind its base, through powers of powers. */
  private void moveToBase(int sign) {
    int end = sign - 1;
    while (tokens.get(end) instanceof PowerPtg) {
      end = start(end - 1) - 1;
    }
    tokens.add(end + 1, tokens.remove(sign));
  }

  /** Where the operand begins whose last token is at {@code end}. */
  private int start(int end) {
    int missing = 1;
    int position = end;
    while (true) {
      Ptg token = tokens.get(position);
      if (token instanceof OperationPtg operation) {
        missing += operation.getNumberOfOperands() - 1;
      } else if (!(token instanceof ControlPtg)) {
        missing--;
      }
      if (missing == 0) {
        return position;
      }
      position--;
    }
  }
}
