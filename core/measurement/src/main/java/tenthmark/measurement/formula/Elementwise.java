package tenthmark.measurement.formula;

import java.util.List;

/** A function of single numbers. */
sealed interface Elementwise extends Function {

  @Override
  default boolean takesOne(int index) {
    return true;
  }

  /** A function of one number. */
  record OfOne(Unary function) implements Elementwise {

    @Override
    public String name() {
      return function.name();
    }

    @Override
    public Arity arity() {
      return Arity.exactly(1);
    }

    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return new Operand.Number<>(
          evaluator.field().apply(function, evaluator.number(arguments.get(0))));
    }
  }

  /** A function of two numbers. */
  record OfTwo(Binary function) implements Elementwise {

    @Override
    public String name() {
      return function.name();
    }

    @Override
    public Arity arity() {
      return Arity.exactly(2);
    }

    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return new Operand.Number<>(
          evaluator
              .field()
              .apply(
                  function,
                  evaluator.number(arguments.get(0)),
                  evaluator.number(arguments.get(1))));
    }
  }

  /** A function whose second number may be left out. */
  record OfOneOrTwo(OfOne ofOne, OfTwo ofTwo) implements Elementwise {

    OfOneOrTwo(Unary one, Binary two) {
      this(new OfOne(one), new OfTwo(two));
    }

    @Override
    public String name() {
      return ofTwo.name();
    }

    @Override
    public Arity arity() {
      return new Arity(1, 2);
    }

    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return (arguments.size() == 1 ? ofOne : ofTwo).call(evaluator, arguments);
    }
  }
}
