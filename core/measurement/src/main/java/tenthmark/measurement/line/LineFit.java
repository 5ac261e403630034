package tenthmark.measurement.line;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Fits a straight line to points by least squares. */
public final class LineFit {

  static final String TOO_FAR = "fit.too.far";

  /** Beyond this ratio a weighted sum holds no digit of the lighter points. */
  private static final double WIDEST_RATIO = 1e8;

  private final List<Point> points;
  private final boolean throughOrigin;
  private final Axis x;
  private final Axis y;

  private LineFit(List<Point> points, boolean throughOrigin, int fewest) {
    this.points = points;
    this.throughOrigin = throughOrigin;
    this.x = throughOrigin ? Axis.fromZero(points, Point::x) : Axis.centred(points, Point::x);
    this.y = throughOrigin ? Axis.fromZero(points, Point::y) : Axis.centred(points, Point::y);
    if (points.size() < fewest) {
      throw FitException.of("fit.line.few", fewest);
    }
    if (throughOrigin ? Arrays.stream(x.values()).allMatch(u -> u == 0) : x.isSinglePlace()) {
      throw FitException.of(throughOrigin ? "fit.x.zero" : "fit.x.equal");
    }
  }

  /** The fewest points whose scatter tells anything: they leave a degree of freedom. */
  public static int fewestToScatter(boolean throughOrigin) {
    return fewest(throughOrigin) + 1;
  }

  /** The fewest points that make a line. */
  public static int fewest(boolean throughOrigin) {
    return throughOrigin ? 1 : 2;
  }

  /**
   * The line that makes the sum of (y - line)² least; what uncertainties the points have is not
   * used. Its uncertainties come from the scatter of the points about the line.
   *
   * @throws FitException if the points are too few or all above one another
   */
  public static Line byScatter(List<Point> points, boolean throughOrigin) {
    LineFit fit = new LineFit(points, throughOrigin, fewestToScatter(throughOrigin));
    double[] none = new double[points.size()];
    double[] equal = new double[points.size()];
    Arrays.fill(equal, 1);
    LeastSquares squares =
        new LeastSquares(fit.x.values(), fit.y.values(), none, equal, throughOrigin);
    LeastSquares.Solution solution = squares.solve().orElseThrow(LineFit::unsettled);
    double freedom = fit.freedom();
    return fit.line(
        solution, Math.sqrt(solution.weightedSquares() / freedom), OptionalDouble.empty());
  }

  /**
   * The line that makes chi-squared least, the sum of (y - line)² / (uy² + slope² ux²), by the
   * equations of York et al., Am. J. Phys. 72 (2004) 367, for uncorrelated uncertainties. Its
   * uncertainties come from those of the points alone, at the adjusted points; without ux this is
   * the line weighted by 1/uy².
   *
   * @throws FitException if the points are too few, all above one another, or a point has no
   *     uncertainty, or if no slope settles
   */
  public static Line byUncertainties(List<Point> points, boolean throughOrigin) {
    LineFit fit = new LineFit(points, throughOrigin, fewest(throughOrigin));
    double[] ux = points.stream().mapToDouble(point -> fit.x.scaled(point.ux())).toArray();
    double[] uy = points.stream().mapToDouble(point -> fit.y.scaled(point.uy())).toArray();
    double unit = unit(ux, uy);
    LeastSquares squares =
        new LeastSquares(
            fit.x.values(),
            fit.y.values(),
            variances(ux, unit),
            variances(uy, unit),
            throughOrigin);
    LeastSquares.Solution solution = squares.solve().orElseThrow(LineFit::unsettled);
    double chiSquared = solution.weightedSquares() / unit / unit;
    return fit.line(solution, unit, OptionalDouble.of(chiSquared));
  }

  /** The greatest uncertainty of a point, so that no weight is out of proportion. */
  private static double unit(double[] ux, double[] uy) {
    double[] sizes =
        IntStream.range(0, ux.length).mapToDouble(i -> Math.hypot(ux[i], uy[i])).toArray();
    double least = Arrays.stream(sizes).min().orElseThrow();
    double greatest = Arrays.stream(sizes).max().orElseThrow();
    if (least == 0) {
      throw FitException.of("fit.no.uncertainty");
    }
    if (greatest > WIDEST_RATIO * least) {
      throw FitException.of("fit.ratio");
    }
    return greatest;
  }

  private Line line(LeastSquares.Solution solution, double unit, OptionalDouble chiSquared) {
    Line line =
        new Line(
            y.slope(solution.slope(), x),
            y.slope(unit * solution.slopeUncertainty(), x),
            x.coordinate(solution.centre()),
            y.coordinate(solution.height()),
            y.difference(unit * solution.heightUncertainty()),
            chiSquared,
            freedom(),
            freedom() == 0 ? 0 : y.difference(Math.sqrt(solution.squares() / freedom())));
    if (isFinite(line)) {
      return line;
    }
    throw FitException.of(TOO_FAR);
  }

  private int freedom() {
    return points.size() - (throughOrigin ? 1 : 2);
  }

  private static FitException unsettled() {
    return FitException.of("fit.no.slope");
  }

  private static boolean isFinite(Line line) {
    return Double.isFinite(line.intercept())
        && Double.isFinite(line.interceptUncertainty())
        && Double.isFinite(line.chiSquared().orElse(0))
        && Double.isFinite(line.residualDeviation());
  }

  private static double[] variances(double[] uncertainties, double unit) {
    return Arrays.stream(uncertainties).map(u -> (u / unit) * (u / unit)).toArray();
  }
}
