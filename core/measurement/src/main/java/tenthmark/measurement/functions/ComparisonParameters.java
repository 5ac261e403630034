package tenthmark.measurement.functions;

import java.util.List;
import java.util.Optional;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.comparison.Comparison;
import tenthmark.measurement.wording.Message;

/** The two results that LAB_GAP and LAB_AGREE compare. */
final class ComparisonParameters {

  private static final Parameter<Double> V1 =
      Parameter.required("v1", "First value.", Kinds.number());

  private static final Parameter<Double> U1 =
      Parameter.required("u1", "Uncertainty of the first value, 0 if exact.", Kinds.notNegative());

  private static final Parameter<Double> V2 =
      Parameter.required("v2", "Second value, in the same unit.", Kinds.number());

  private static final Parameter<Double> U2 =
      Parameter.required("u2", "Uncertainty of the second value, 0 if exact.", Kinds.notNegative());

  static final List<Parameter<?>> ALL = List.of(V1, U1, V2, U2, CommonParameters.COMBINE);

  /** The comparison as the function reference states it. */
  static final String FORMULA =
      "|v1 - v2| / (u1 + u2) (straight) or |v1 - v2| / sqrt(u1^2 + u2^2) (quadrature); the values"
          + " agree if that is at most 1; 0 for equal values";

  /** Where the comparison is from. */
  static final String SOURCE =
      "straight: overlap of the intervals, common practice, no source; quadrature: JCGM 200:2012,"
          + " 2.47 (metrological compatibility), for independent uncertainties";

  private static final double TENFOLD = 10;

  private ComparisonParameters() {}

  /**
   * Two results of one quantity that lie tenfold apart while the first is not known to half of
   * itself: its uncertainty and the second value have changed places.
   */
  static Optional<Message> doubt(Arguments arguments) {
    double first = Math.abs(arguments.get(V1));
    double second = Math.abs(arguments.get(V2));
    boolean apart = Math.max(first, second) > TENFOLD * Math.min(first, second);
    return apart && first > second && arguments.get(U1) > first / 2
        ? Optional.of(Message.of("doubt.comparison"))
        : Optional.empty();
  }

  static Comparison comparisonIn(Arguments arguments) {
    double v1 = arguments.get(V1);
    double u1 = arguments.get(U1);
    double v2 = arguments.get(V2);
    double u2 = arguments.get(U2);
    if (u1 == 0 && u2 == 0 && v1 != v2) {
      throw ArgumentException.of("comparison.exact");
    }
    return Comparison.of(v1, u1, v2, u2, arguments.get(CommonParameters.COMBINE));
  }
}
