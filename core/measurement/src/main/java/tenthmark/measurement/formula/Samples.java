package tenthmark.measurement.formula;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * Many samples at once, one array entry each; an array of one entry stands for all samples. A
 * sample that has no value becomes NaN and stays so, for the others must not suffer.
 */
final class Samples implements Field<double[]> {

  @Override
  public double[] constant(double value) {
    return new double[] {value};
  }

  @Override
  public double[] apply(Unary function, double[] x) {
    double[] values = new double[x.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = finite(function.value(x[i]));
    }
    return values;
  }

  @Override
  public double[] apply(Binary function, double[] x, double[] y) {
    double[] values = new double[Math.max(x.length, y.length)];
    int stepX = x.length == 1 ? 0 : 1;
    int stepY = y.length == 1 ? 0 : 1;
    for (int i = 0; i < values.length; i++) {
      values[i] = finite(function.value(x[i * stepX], y[i * stepY]));
    }
    return values;
  }

  @Override
  public double[] apply(Aggregate function, List<double[]> numbers) {
    double[] values = new double[numbers.stream().mapToInt(x -> x.length).max().orElse(1)];
    double[] operands = new double[numbers.size()];
    for (int i = 0; i < values.length; i++) {
      for (int k = 0; k < operands.length; k++) {
        double[] samples = numbers.get(k);
        operands[k] = samples[samples.length == 1 ? 0 : i];
      }
      values[i] = finite(function.value(operands));
    }
    return values;
  }

  @Override
  public OptionalDouble fixed(double[] number) {
    return number.length == 1 ? OptionalDouble.of(number[0]) : OptionalDouble.empty();
  }

  @Override
  public Operand<double[]> whereUndefined(double[] number, Supplier<Operand<double[]>> otherwise) {
    double[] defined = new double[number.length];
    for (int i = 0; i < defined.length; i++) {
      defined[i] = Double.isNaN(number[i]) ? 0 : 1;
    }
    return choose(defined, () -> new Operand.Number<>(number), otherwise);
  }

  @Override
  public Operand<double[]> choose(
      double[] condition, Supplier<Operand<double[]>> yes, Supplier<Operand<double[]>> no) {
    boolean anyYes = false;
    boolean anyNo = false;
    boolean anyUndefined = false;
    for (double sample : condition) {
      anyUndefined |= Double.isNaN(sample);
      anyNo |= sample == 0;
      anyYes |= sample != 0 && !Double.isNaN(sample);
    }
    if (!anyUndefined && anyYes != anyNo) {
      return anyYes ? yes.get() : no.get();
    }
    return new Operand.Number<>(
        blend(
            condition,
            anyYes ? numberIn(yes.get()) : constant(Double.NaN),
            anyNo ? numberIn(no.get()) : constant(Double.NaN)));
  }

  private double[] numberIn(Operand<double[]> operand) {
    return new Evaluator<>(this, reference -> operand).numberIn(operand);
  }

  private static double[] blend(double[] condition, double[] yes, double[] no) {
    double[] values = new double[Math.max(condition.length, Math.max(yes.length, no.length))];
    for (int i = 0; i < values.length; i++) {
      double decides = at(condition, i);
      values[i] = Double.isNaN(decides) ? Double.NaN : decides != 0 ? at(yes, i) : at(no, i);
    }
    return values;
  }

  private static double at(double[] samples, int index) {
    return samples[samples.length == 1 ? 0 : index];
  }

  private static double finite(double value) {
    return Double.isFinite(value) ? value : Double.NaN;
  }
}
