package tenthmark.measurement.formula;

import java.util.List;

/** A function of single numbers; inside SUMPRODUCT it works cell by cell. */
sealed interface Elementwise extends Function {

  /** Its values, cell by cell. */
  <T> Operand.Block<T> callOnBlocks(Evaluator<T> evaluator, List<Expression> arguments);

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
      return value(evaluator, evaluator.operand(arguments.get(0)));
    }

    @Override
    public <T> Operand.Block<T> callOnBlocks(Evaluator<T> evaluator, List<Expression> arguments) {
      Operand.Block<T> block = evaluator.block(arguments.get(0));
      return evaluator.paired(block, block, (x, same) -> value(evaluator, x));
    }

    private <T> Operand<T> value(Evaluator<T> evaluator, Operand<T> x) {
      return new Operand.Number<>(evaluator.field().apply(function, evaluator.numberIn(x)));
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
      return value(
          evaluator, evaluator.operand(arguments.get(0)), evaluator.operand(arguments.get(1)));
    }

    @Override
    public <T> Operand.Block<T> callOnBlocks(Evaluator<T> evaluator, List<Expression> arguments) {
      return evaluator.paired(
          evaluator.block(arguments.get(0)),
          evaluator.block(arguments.get(1)),
          (x, y) -> value(evaluator, x, y));
    }

    private <T> Operand<T> value(Evaluator<T> evaluator, Operand<T> x, Operand<T> y) {
      return new Operand.Number<>(
          evaluator.field().apply(function, evaluator.numberIn(x), evaluator.numberIn(y)));
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
      return meant(arguments).call(evaluator, arguments);
    }

    @Override
    public <T> Operand.Block<T> callOnBlocks(Evaluator<T> evaluator, List<Expression> arguments) {
      return meant(arguments).callOnBlocks(evaluator, arguments);
    }

    private Elementwise meant(List<Expression> arguments) {
      return arguments.size() == 1 ? ofOne : ofTwo;
    }
  }
}
