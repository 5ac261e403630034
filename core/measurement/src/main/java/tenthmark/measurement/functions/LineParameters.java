package tenthmark.measurement.functions;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.line.FitException;
import tenthmark.measurement.line.Line;
import tenthmark.measurement.line.LineFit;
import tenthmark.measurement.line.Point;

/** The parameters of the functions that fit a line, and the line they ask for. */
final class LineParameters {

  static final Parameter<List<OptionalDouble>> X =
      Parameter.required(
          "x",
          "The x of each point. A row with a blank cell is skipped.",
          Kinds.column(Kinds.number()));

  static final Parameter<List<OptionalDouble>> Y =
      Parameter.required("y", "The y of each point.", Kinds.column(Kinds.number()));

  static final Parameter<List<OptionalDouble>> UX =
      Parameter.optional(
          "ux",
          "Standard uncertainty of each x, or one for all. None if left out.",
          Kinds.column(Kinds.notNegative()));

  static final Parameter<List<OptionalDouble>> UY =
      Parameter.optional(
          "uy",
          "Standard uncertainty of each y, or one for all. If ux and uy are left out, the"
              + " scatter gives the uncertainties.",
          Kinds.column(Kinds.positive()));

  static final Parameter<Boolean> ORIGIN =
      Parameter.optional(
          "origin",
          "TRUE, 1 or yes for a line through the origin. FALSE if left out.",
          Kinds.yesOrNo(),
          false);

  static final List<Parameter<?>> ALL = List.of(X, Y, UX, UY, ORIGIN);

  static final String SOURCE =
      "JCGM 100:2008, H.3; with uncertainties in x: York et al., Am. J. Phys. 72 (2004) 367";

  static final String METHOD =
      "Neither ux nor uy: sum((y - line)²) is least; uncertainties from the scatter about the line,"
          + " sqrt(sum((y - line)²)/degrees of freedom). With uy: sum(((y - line)/uy)²) is least;"
          + " uncertainties from uy alone, whatever the scatter. With ux: chi-squared = sum((y -"
          + " line)²/(uy² + slope² ux²)) is least; uncertainties from ux and uy alone, at the"
          + " adjusted points; errors of x and y independent. Compare chi-squared with the degrees of"
          + " freedom to see whether the points scatter as ux and uy say. Degrees of freedom: n - 2,"
          + " through the origin n - 1. With ux or uy the line through two points has its uncertainty"
          + " too.";

  /** A brake lever's spring, invented: extension in mm, force in N. */
  static final List<List<Object>> LEVER =
      List.of(
          List.of(2.0, 3.1),
          List.of(4.0, 5.9),
          List.of(6.0, 9.2),
          List.of(8.0, 11.8),
          List.of(10.0, 15.1));

  /** For points without an uncertainty. */
  static final List<OptionalDouble> NONE = List.of(OptionalDouble.of(0));

  private LineParameters() {}

  static Line line(Arguments arguments) {
    boolean origin = arguments.get(ORIGIN);
    boolean byScatter = arguments.find(UX).isEmpty() && arguments.find(UY).isEmpty();
    List<Point> points =
        points(
            arguments,
            arguments.find(UX).orElse(NONE),
            arguments.find(UY).orElse(NONE),
            byScatter ? LineFit.fewestToScatter(origin) : LineFit.fewest(origin));
    return fitted(
        () ->
            byScatter
                ? LineFit.byScatter(points, origin)
                : LineFit.byUncertainties(points, origin));
  }

  /** The outcome of a fit, or the sentence why there is none. */
  static <T> T fitted(Supplier<T> fit) {
    try {
      return fit.get();
    } catch (FitException problem) {
      throw new ArgumentException(problem.said());
    }
  }

  /** The points without a blank cell, at least {@code fewest}. */
  static List<Point> points(
      Arguments arguments, List<OptionalDouble> ux, List<OptionalDouble> uy, int fewest) {
    return new CompleteRows()
            .with(X.name(), arguments.get(X))
            .with(Y.name(), arguments.get(Y))
            .withEach(UX.name(), ux)
            .withEach(UY.name(), uy)
            .atLeast(fewest, "fit")
            .stream()
            .map(row -> new Point(row[0], row[1], row[2], row[3]))
            .toList();
  }
}
