package tenthmark.measurement.formula;

import java.util.List;

/** A function of the spreadsheet formula language. */
public interface Function {

  /** Its name in upper case. */
  String name();

  /** How many arguments it takes. */
  Arity arity();

  /**
   * Whether an argument is a single value, so that in an array formula the function is computed for
   * each of the cells that are given there.
   *
   * @param index of the argument, from 0
   */
  default boolean takesOne(int index) {
    return false;
  }

  /** Its value. */
  <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments);
}
