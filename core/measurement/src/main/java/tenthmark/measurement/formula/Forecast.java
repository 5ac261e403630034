package tenthmark.measurement.formula;

import java.util.List;

/** The y at an x of the straight line through points. */
record Forecast() implements Function {

  @Override
  public String name() {
    return "FORECAST";
  }

  @Override
  public Arity arity() {
    return Arity.exactly(3);
  }

  @Override
  public boolean takesOne(int index) {
    return index == 0;
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    List<Expression> points = arguments.subList(1, 3);
    Field<T> field = evaluator.field();
    T rise =
        field.apply(
            Binary.MULTIPLY,
            Pairing.SLOPE.of(evaluator, points),
            evaluator.number(arguments.get(0)));
    return new Operand.Number<>(
        field.apply(Binary.ADD, Pairing.INTERCEPT.of(evaluator, points), rise));
  }
}
