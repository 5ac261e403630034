package tenthmark.measurement.formula;

/**
 * What the references of one formula stand for.
 *
 * @param <T> the numbers of the field
 */
public interface Scope<T> {

  /** What the cells or the name hold. */
  Operand<T> at(Expression.Reference reference);

  /** What two operands give that are joined to one text. */
  default Operand<T> joined(Operand<T> left, Operand<T> right) {
    throw FormulaException.of("formula.joined");
  }

  /** What a function gives that the engine does not know. */
  default Operand<T> called(Expression.ForeignCall call) {
    throw FormulaException.of("formula.function", call.name());
  }
}
