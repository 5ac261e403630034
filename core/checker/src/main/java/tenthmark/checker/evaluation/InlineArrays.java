package tenthmark.checker.evaluation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.ArrayPtg;
import org.apache.poi.ss.formula.ptg.AttrPtg;
import org.apache.poi.ss.formula.ptg.ControlPtg;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.OperationPtg;
import org.apache.poi.ss.formula.ptg.ParenthesisPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.RefPtgBase;
import org.apache.poi.ss.formula.ptg.ScalarConstantPtg;
import org.apache.poi.ss.formula.ptg.ValueOperatorPtg;

/**
 * Whether a formula in one cell calculates with whole ranges in an argument of a function that
 * takes arrays there, as in {@code SLOPE(LN(B2:B8),A2:A8)}. Office programs do so without an array
 * formula; POI does not.
 */
final class InlineArrays {

  private enum Kind {
    SINGLE,
    RANGE,
    COMPUTED
  }

  private record Operand(Ptg token, Kind kind) {}

  private final Deque<Operand> operands = new ArrayDeque<>();
  private final Function<NamePtg, Ptg[]> names;
  private boolean inside;
  private boolean outside;

  private InlineArrays(Function<NamePtg, Ptg[]> names) {
    this.names = names;
  }

  /**
   * Looks at tokens in reverse Polish order.
   *
   * @param names the tokens of what a name stands for
   * @throws NotCheckableException if it also calculates with ranges where office programs take one
   *     cell of each
   */
  static boolean areIn(Ptg[] tokens, Function<NamePtg, Ptg[]> names) {
    InlineArrays arrays = new InlineArrays(names);
    for (Ptg token : tokens) {
      arrays.read(token);
    }
    if (arrays.inside && (arrays.outside || arrays.operands.peek().kind() != Kind.SINGLE)) {
      throw NotCheckableException.of("reason.arrays");
    }
    return arrays.inside;
  }

  private void read(Ptg token) {
    if (token instanceof AbstractFunctionPtg function) {
      operands.push(new Operand(token, result(function, taken(function))));
    } else if (token instanceof OperationPtg operation) {
      operands.push(new Operand(token, result(operation, taken(operation))));
    } else if (token instanceof AttrPtg attribute && attribute.isSum()) {
      outside |= operands.pop().kind() == Kind.COMPUTED;
      operands.push(new Operand(token, Kind.SINGLE));
    } else if (!(token instanceof ControlPtg)) {
      operands.push(new Operand(token, isSeveral(token) ? Kind.RANGE : Kind.SINGLE));
    }
  }

  /** A name counts as several values unless it is seen to be one. */
  private boolean isSeveral(Ptg token) {
    return token instanceof AreaPtgBase
        || token instanceof ArrayPtg
        || token instanceof NamePtg name
            && Stream.of(names.apply(name)).anyMatch(part -> !isSingle(part));
  }

  private static boolean isSingle(Ptg token) {
    return token instanceof ScalarConstantPtg
        || token instanceof RefPtgBase
        || token instanceof ValueOperatorPtg
        || token instanceof ParenthesisPtg;
  }

  private List<Operand> taken(OperationPtg operation) {
    List<Operand> taken = new ArrayList<>();
    for (int i = 0; i < operation.getNumberOfOperands(); i++) {
      taken.add(0, operands.pop());
    }
    return taken;
  }

  /** Of an operator; those of references make one reference. */
  private static Kind result(OperationPtg operation, List<Operand> taken) {
    if (!(operation instanceof ValueOperatorPtg)) {
      return Kind.RANGE;
    }
    return taken.stream().allMatch(operand -> operand.kind() == Kind.SINGLE)
        ? Kind.SINGLE
        : Kind.COMPUTED;
  }

  private Kind result(AbstractFunctionPtg function, List<Operand> taken) {
    Kind result = Kind.SINGLE;
    for (int i = 0; i < taken.size(); i++) {
      Kind kind = taken.get(i).kind();
      byte accepts = accepts(function, taken, i);
      if (accepts == Ptg.CLASS_VALUE && kind != Kind.SINGLE) {
        result = Kind.COMPUTED;
      }
      inside |= accepts == Ptg.CLASS_ARRAY && kind == Kind.COMPUTED;
      outside |= accepts == Ptg.CLASS_REF && kind == Kind.COMPUTED;
    }
    return result;
  }

  /** What a function takes at a place: one value, an array, or a reference. */
  private static byte accepts(AbstractFunctionPtg function, List<Operand> taken, int place) {
    if (!function.isExternalFunction()) {
      return function.getParameterClass(place);
    }
    return taken.get(0).token() instanceof NameXPxg name
            && OwnFunctions.takesArrays(name.getNameName())
        ? Ptg.CLASS_ARRAY
        : Ptg.CLASS_REF;
  }
}
