package tenthmark.measurement.formula;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;

/**
 * Values whose last bit is left to chance at each step. How far results spread shows how far two
 * programs that are both right may differ.
 */
final class Noisy implements Field<Double> {

  private final Doubles doubles = new Doubles();
  private final Random random;

  private Noisy(Random random) {
    this.random = random;
  }

  /** The largest relative deviation from the plain value in a number of tries. */
  static double spread(Model model, Random random, int tries, double... inputs) {
    List<Double> point = Arrays.stream(inputs).boxed().toList();
    double value = model.value(inputs);
    double spread = 0;
    for (int i = 0; i < tries; i++) {
      double noisy = model.evaluate(new Noisy(random), point);
      spread = Math.max(spread, Math.abs(noisy - value) / Math.abs(value));
    }
    return value == 0 ? 0 : spread;
  }

  private double noisy(double value) {
    return value * (1 + (random.nextInt(3) - 1) * Math.ulp(1.0));
  }

  @Override
  public Double constant(double value) {
    return value;
  }

  @Override
  public Double apply(Unary function, Double x) {
    return noisy(doubles.apply(function, x));
  }

  @Override
  public Double apply(Binary function, Double x, Double y) {
    return noisy(doubles.apply(function, x, y));
  }

  @Override
  public Double apply(Aggregate function, List<Double> numbers) {
    return noisy(doubles.apply(function, numbers));
  }

  @Override
  public OptionalDouble fixed(Double number) {
    return OptionalDouble.of(number);
  }

  @Override
  public Operand<Double> choose(
      Double condition, Supplier<Operand<Double>> yes, Supplier<Operand<Double>> no) {
    return doubles.choose(condition, yes, no);
  }
}
