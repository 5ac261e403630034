package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * Values with exact first derivatives. Each step records the slopes along its operands, and one
 * sweep back from the result gives the derivatives along all inputs. A gradient carried forward in
 * each number, as in Hipparchus, would cost inputs times steps: a mean of 10,000 readings needs
 * 10,000 times 10,000 numbers there and 10,000 here.
 */
final class Slopes implements Field<Slopes.Traced> {

  private static final Traced[] NONE = {};
  private static final double[] FLAT = {};

  private final Doubles values = new Doubles();
  private final List<Traced> steps = new ArrayList<>();

  /** A number with the operands it was made of and the slope along each. */
  static final class Traced {

    private final double value;
    private final boolean varies;
    private final Traced[] operands;
    private final double[] slopes;
    private double share;

    private Traced(double value, boolean varies, Traced[] operands, double[] slopes) {
      this.value = value;
      this.varies = varies;
      this.operands = operands;
      this.slopes = slopes;
    }
  }

  /** A number along which slopes are wanted. */
  Traced input(double value) {
    return new Traced(value, true, NONE, FLAT);
  }

  @Override
  public Traced constant(double value) {
    return new Traced(value, false, NONE, FLAT);
  }

  @Override
  public Traced apply(Unary function, Traced x) {
    double value = values.apply(function, x.value);
    if (!x.varies) {
      return constant(value);
    }
    double slope = function.slope(x.value);
    if (!Double.isFinite(slope)) {
      throw Trouble.noSlope(function.shown(x.value));
    }
    return step(value, new Traced[] {x}, new double[] {slope});
  }

  @Override
  public Traced apply(Binary function, Traced x, Traced y) {
    double value = values.apply(function, x.value, y.value);
    if (!x.varies && !y.varies) {
      return constant(value);
    }
    double alongX = x.varies ? function.slopeAlongFirst(x.value, y.value) : 0;
    double alongY = y.varies ? function.slopeAlongSecond(x.value, y.value) : 0;
    if (!Double.isFinite(alongX + alongY)) {
      throw Trouble.noSlope(function.shown(x.value, y.value));
    }
    return function.isComparison()
        ? constant(value)
        : step(value, new Traced[] {x, y}, new double[] {alongX, alongY});
  }

  @Override
  public Traced apply(Aggregate function, List<Traced> numbers) {
    double[] operands = numbers.stream().mapToDouble(number -> number.value).toArray();
    double value = function.value(operands);
    if (!Double.isFinite(value)) {
      throw Trouble.undefined(function.name(), value);
    }
    double[] slopes = new double[operands.length];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = numbers.get(i).varies ? function.slope(operands, i) : 0;
      if (!Double.isFinite(slopes[i])) {
        throw Trouble.noSlope(function.name());
      }
    }
    return step(value, numbers.toArray(NONE), slopes);
  }

  @Override
  public OptionalDouble fixed(Traced number) {
    return number.varies ? OptionalDouble.empty() : OptionalDouble.of(number.value);
  }

  @Override
  public Operand<Traced> choose(
      Traced condition, Supplier<Operand<Traced>> yes, Supplier<Operand<Traced>> no) {
    return condition.value != 0 ? yes.get() : no.get();
  }

  private Traced step(double value, Traced[] operands, double[] slopes) {
    Traced step = new Traced(value, true, operands, slopes);
    steps.add(step);
    return step;
  }

  /** The value of a result with its derivatives along the inputs; to be asked once. */
  Linearised linearised(Traced result, List<Traced> inputs) {
    result.share = 1;
    for (int i = steps.size() - 1; i >= 0; i--) {
      Traced step = steps.get(i);
      if (step.share != 0) {
        for (int k = 0; k < step.operands.length; k++) {
          step.operands[k].share += step.share * step.slopes[k];
        }
      }
    }
    double[] sensitivities = new double[inputs.size()];
    for (int i = 0; i < sensitivities.length; i++) {
      sensitivities[i] = inputs.get(i).share;
      if (!Double.isFinite(sensitivities[i])) {
        throw FormulaException.of("formula.steep");
      }
    }
    return new Linearised(result.value, sensitivities);
  }
}
