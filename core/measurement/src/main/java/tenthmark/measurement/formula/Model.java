package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A result as a function of its inputs: the measurement model of JCGM 100:2008, 4.1. */
public interface Model {

  /** Number of inputs. */
  int inputs();

  /** Whether the result is computed from this input at all. */
  boolean reaches(int input);

  /**
   * Computes the result.
   *
   * @throws FormulaException if it is not defined there
   */
  <T> T evaluate(Field<T> field, List<T> inputs);

  /**
   * The result at one point.
   *
   * @throws FormulaException if it is not defined there
   */
  default double value(double... inputs) {
    List<Double> point = new ArrayList<>(inputs.length);
    for (double input : inputs) {
      point.add(input);
    }
    return evaluate(new Doubles(), point);
  }

  /**
   * The result at one point with its exact derivatives.
   *
   * @throws FormulaException if either is not defined there
   */
  default Linearised linearised(double... inputs) {
    return linearisedAfter(0, inputs);
  }

  /**
   * The result at one point with its exact derivatives along the inputs after the first few, which
   * are constants: they need no derivative there.
   *
   * @throws FormulaException if the result or a derivative is not defined there
   */
  default Linearised linearisedAfter(int constants, double... inputs) {
    Slopes slopes = new Slopes();
    List<Slopes.Traced> point = new ArrayList<>(inputs.length);
    for (int i = 0; i < inputs.length; i++) {
      point.add(i < constants ? slopes.constant(inputs[i]) : slopes.input(inputs[i]));
    }
    return slopes.linearised(evaluate(slopes, point), point.subList(constants, inputs.length));
  }

  /**
   * The results at many points.
   *
   * @param inputs for each input its value at every point
   * @param count number of points
   * @return one result for each point, NaN where it is not defined
   */
  default double[] values(List<double[]> inputs, int count) {
    double[] values = evaluate(new Samples(), inputs);
    if (values.length == count) {
      return values;
    }
    double[] same = new double[count];
    Arrays.fill(same, values[0]);
    return same;
  }
}
