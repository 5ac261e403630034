package tenthmark.measurement.formula;

/**
 * What the references of one formula stand for.
 *
 * @param <T> the numbers of the field
 */
interface Scope<T> {

  /** What the cells or the name hold. */
  Operand<T> at(Expression.Reference reference);
}
