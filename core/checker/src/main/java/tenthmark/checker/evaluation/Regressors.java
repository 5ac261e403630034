package tenthmark.checker.evaluation;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.line.FitException;
import tenthmark.measurement.line.LinearFit;

/**
 * The arguments that the functions of regression have in common: the values of y, those of x
 * (counted from 1 if they are left out), and whether there is an intercept. x is either of the size
 * of y, or has a column for each variable beside a column of y, or a row for each under a row of y.
 *
 * @param function its name, for what it says
 * @param y one value for each row of x
 * @param x a row for each value, a column for each variable
 * @param upright whether variables are columns of the sheet
 */
record Regressors(String function, double[] y, double[][] x, boolean upright) {

  static Regressors of(String function, List<Value> arguments, DoubleUnaryOperator scale) {
    double[][] ys = numbers(arguments.get(0), function);
    boolean upright = ys[0].length == 1;
    double[] y =
        IntStream.range(0, ys.length * ys[0].length)
            .mapToDouble(i -> scale.applyAsDouble(ys[i / ys[0].length][i % ys[0].length]))
            .toArray();
    double[][] xs =
        isGiven(arguments, 1)
            ? numbers(arguments.get(1), function)
            : counted(ys.length, ys[0].length);
    if (xs.length == ys.length && xs[0].length == ys[0].length) {
      return new Regressors(function, y, single(xs), upright);
    }
    if (upright && xs.length == y.length) {
      return new Regressors(function, y, xs, true);
    }
    if (ys.length == 1 && xs[0].length == y.length) {
      return new Regressors(function, y, turned(xs), false);
    }
    throw NotCheckableException.of("reason.line.variables", function);
  }

  /** Whether an argument is given and not left empty. */
  static boolean isGiven(List<Value> arguments, int index) {
    return index < arguments.size() && !(arguments.get(index) instanceof Value.Blank);
  }

  /** A switch among the arguments. */
  boolean isOn(List<Value> arguments, int index, boolean otherwise) {
    return isGiven(arguments, index)
        ? numbers(arguments.get(index), function)[0][0] != 0
        : otherwise;
  }

  LinearFit fit(boolean throughOrigin) {
    try {
      return LinearFit.of(y, x, throughOrigin);
    } catch (FitException noLine) {
      throw NotCheckableException.because(noLine, "reason.line", function, noLine.said());
    }
  }

  /** New values of x as rows of variables. */
  double[][] rows(Value values) {
    double[][] numbers = numbers(values, function);
    if (x[0].length == 1) {
      return single(numbers);
    }
    double[][] rows = upright ? numbers : turned(numbers);
    if (rows[0].length != x[0].length) {
      throw NotCheckableException.of("reason.line.variables", function);
    }
    return rows;
  }

  private static double[][] counted(int height, int width) {
    double[][] counted = new double[height][width];
    for (int i = 0; i < height * width; i++) {
      counted[i / width][i % width] = i + 1.0;
    }
    return counted;
  }

  private static double[][] single(double[][] numbers) {
    int width = numbers[0].length;
    return IntStream.range(0, numbers.length * width)
        .mapToObj(i -> new double[] {numbers[i / width][i % width]})
        .toArray(double[][]::new);
  }

  private static double[][] turned(double[][] numbers) {
    return IntStream.range(0, numbers[0].length)
        .mapToObj(
            column ->
                IntStream.range(0, numbers.length)
                    .mapToDouble(row -> numbers[row][column])
                    .toArray())
        .toArray(double[][]::new);
  }

  private static double[][] numbers(Value value, String function) {
    return value instanceof Value.Table table
        ? table.rows().stream()
            .map(row -> row.stream().mapToDouble(cell -> number(cell, function)).toArray())
            .toArray(double[][]::new)
        : new double[][] {{number(value, function)}};
  }

  private static double number(Value value, String function) {
    if (value instanceof Value.Numeric number) {
      return number.number();
    }
    throw NotCheckableException.of("reason.line.numbers", function);
  }
}
