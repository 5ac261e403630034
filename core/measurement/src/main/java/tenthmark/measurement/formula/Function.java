package tenthmark.measurement.formula;

import java.util.List;

/** A function of the spreadsheet formula language. */
public interface Function {

  /** Its name in upper case. */
  String name();

  /** How many arguments it takes. */
  Arity arity();

  /** Its value. */
  <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments);
}
