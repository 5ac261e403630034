package tenthmark.checker.evaluation;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.line.FitException;
import tenthmark.measurement.line.Line;
import tenthmark.measurement.line.LineFit;
import tenthmark.measurement.line.Point;

/**
 * LINEST of one variable, LINEST(y; x; with an intercept; with statistics): slope and intercept;
 * their standard uncertainties; coefficient of determination and standard deviation of the
 * residuals; F and the degrees of freedom; sums of squares of the regression and of the residuals
 * (OASIS OpenDocument 1.3, part 4, 6.18.41).
 */
final class LineEstimate implements FreeRefFunction {

  private static final String NAME = "LINEST";

  /** A share of the squares that rounding may leave where every point lies on the line. */
  private static final double ROUNDING = 1e-20;

  @Override
  public ValueEval evaluate(ValueEval[] arguments, OperationEvaluationContext context) {
    List<Value> values =
        Arrays.stream(arguments).map(argument -> Values.argument(argument, context)).toList();
    boolean throughOrigin = isGiven(values, 2) && number(values.get(2)) == 0;
    boolean statistics = isGiven(values, 3) && number(values.get(3)) != 0;
    List<Point> points = points(values);
    try {
      Line line = LineFit.byScatter(points, throughOrigin);
      return Values.result(
          new Value.Table(statistics ? rows(line, points, throughOrigin) : rows(line)), context);
    } catch (FitException noLine) {
      throw NotCheckableException.because(noLine, "reason.line", NAME, noLine.said());
    }
  }

  private static List<List<Value>> rows(Line line) {
    return List.of(row(line.slope(), line.intercept()));
  }

  private static List<List<Value>> rows(Line line, List<Point> points, boolean throughOrigin) {
    double middle =
        throughOrigin ? 0 : points.stream().mapToDouble(Point::x).average().orElseThrow();
    double spread = points.stream().mapToDouble(p -> Math.pow(p.x() - middle, 2)).sum();
    double explained = line.slope() * line.slope() * spread;
    double residual = line.residualDeviation() * line.residualDeviation() * line.freedom();
    if (residual <= ROUNDING * explained) {
      throw NotCheckableException.of("reason.line.rounding", NAME);
    }
    return List.of(
        row(line.slope(), line.intercept()),
        List.of(
            Value.of(line.slopeUncertainty()),
            throughOrigin
                ? new Value.Fault(ErrorEval.NA.getErrorString())
                : Value.of(line.interceptUncertainty())),
        row(explained / (explained + residual), line.residualDeviation()),
        row(explained / residual * line.freedom(), line.freedom()),
        row(explained, residual));
  }

  private static List<Value> row(double left, double right) {
    return List.of(Value.of(left), Value.of(right));
  }

  private static List<Point> points(List<Value> values) {
    List<Double> ys = numbers(values.get(0));
    List<Double> xs =
        isGiven(values, 1)
            ? numbers(values.get(1))
            : IntStream.rangeClosed(1, ys.size()).mapToObj(x -> (double) x).toList();
    if (xs.size() != ys.size()) {
      throw NotCheckableException.of("reason.line.variables", NAME);
    }
    return IntStream.range(0, xs.size())
        .mapToObj(i -> new Point(xs.get(i), ys.get(i), 0, 0))
        .toList();
  }

  private static boolean isGiven(List<Value> values, int index) {
    return index < values.size() && !(values.get(index) instanceof Value.Blank);
  }

  private static List<Double> numbers(Value value) {
    return value instanceof Value.Table table
        ? table.cells().stream().map(LineEstimate::number).toList()
        : List.of(number(value));
  }

  private static double number(Value value) {
    if (value instanceof Value.Numeric number) {
      return number.number();
    }
    throw NotCheckableException.of("reason.line.numbers", NAME);
  }
}
