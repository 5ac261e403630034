package tenthmark.measurement.formula;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * What a formula is computed with. The same evaluation gives a value, a value with its slopes, or
 * the values of many samples, depending on the field.
 *
 * @param <T> the numbers of the field
 */
public interface Field<T> {

  /** A number that no input changes. */
  T constant(double value);

  /** Applies a function of one number. */
  T apply(Unary function, T x);

  /** Applies a function of two numbers. */
  T apply(Binary function, T x, T y);

  /** Applies a function of many numbers. */
  T apply(Aggregate function, List<T> numbers);

  /** The value of a number that no input changes. */
  OptionalDouble fixed(T number);

  /** A number, and where it has none, as in some of many samples, another one. */
  default Operand<T> whereUndefined(T number, Supplier<Operand<T>> otherwise) {
    return new Operand.Number<>(number);
  }

  /** The one where the condition is not zero and the other where it is; only what is needed. */
  Operand<T> choose(T condition, Supplier<Operand<T>> yes, Supplier<Operand<T>> no);
}
