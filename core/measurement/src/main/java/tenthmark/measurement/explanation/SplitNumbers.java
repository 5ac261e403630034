package tenthmark.measurement.explanation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.Expression.Constant;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Sentences;

/**
 * Looks whether a call that is refused or doubted had a decimal comma which the office took for the
 * sign between two arguments: LAB_READING(0,5) has the arguments 0 and 5 where numbers have points.
 */
record SplitNumbers(Calculation calculation, Sentences sentences) {

  /** The sentence about it, after a blank; empty where no comma explains the call. */
  String hint(ForeignCall call) {
    boolean takesCommaForSeparator = sentences.decimalSign() == DecimalSign.POINT;
    return takesCommaForSeparator
            && joined(call.arguments())
                .map(arguments -> new ForeignCall(call.name(), arguments))
                .anyMatch(this::isFine)
        ? " " + sentences.say("why.comma")
        : "";
  }

  /** The arguments with some of the neighbours joined that may have been one number. */
  private static Stream<List<Expression>> joined(List<Expression> arguments) {
    return variants(arguments).filter(variant -> variant.size() < arguments.size());
  }

  private static Stream<List<Expression>> variants(List<Expression> arguments) {
    if (arguments.isEmpty()) {
      return Stream.of(List.of());
    }
    Stream<List<Expression>> apart =
        variants(arguments.subList(1, arguments.size()))
            .map(rest -> before(arguments.get(0), rest));
    if (arguments.size() > 1 && isWhole(arguments.get(0)) && isWhole(arguments.get(1))) {
      Expression one = decimal((Constant) arguments.get(0), (Constant) arguments.get(1));
      return Stream.concat(
          apart, variants(arguments.subList(2, arguments.size())).map(rest -> before(one, rest)));
    }
    return apart;
  }

  private static List<Expression> before(Expression first, List<Expression> rest) {
    List<Expression> all = new ArrayList<>(List.of(first));
    all.addAll(rest);
    return all;
  }

  private static boolean isWhole(Expression argument) {
    return argument instanceof Constant constant
        && constant.value() >= 0
        && constant.value() == Math.rint(constant.value())
        && constant.value() < 1e9;
  }

  private static Constant decimal(Constant whole, Constant decimals) {
    return new Constant(Double.parseDouble((long) whole.value() + "." + (long) decimals.value()));
  }

  private boolean isFine(ForeignCall call) {
    try {
      WorksheetFunction function = calculation.function(call).orElseThrow();
      function.compute(calculation.arguments(function, call), sentences, calculation::convention);
      return Doubts.numbersForTexts(call, function).findAny().isEmpty()
          && function
              .doubt(calculation.arguments(function, call), sentences, calculation::convention)
              .isEmpty();
    } catch (ArgumentException | FormulaException | NotComputableException stillWrong) {
      return false;
    }
  }
}
