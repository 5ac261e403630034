package tenthmark.measurement.functions;

import java.util.Optional;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.result.MeasurementResult;
import tenthmark.measurement.rounding.DigitsRule;
import tenthmark.measurement.rounding.Rounded;
import tenthmark.measurement.wording.Message;

/** The value, its uncertainty and the digits kept, which several worksheet functions take. */
final class ResultParameters {

  static final Parameter<Double> VALUE =
      Parameter.required("value", "The measured or calculated value.", Kinds.number());

  static final Parameter<Double> UNCERTAINTY =
      Parameter.required(
          "uncertainty",
          "Its total uncertainty in the same unit; 0 for an exact value.",
          Kinds.notNegative());

  static final Parameter<DigitsRule> DIGITS =
      Parameter.byConvention(
          "digits",
          "Number of digits, bench (one, or two if the first is 1), standard"
              + " (two) or pdg (by three). Left out: the workbook's, else bench.",
          Kinds.digits(),
          Convention::digits);

  /** The rounding as the function reference states it. */
  static final String ROUNDING =
      "uncertainty to the digits asked for, half up; value to the same place, half to even;"
          + " decimal, a half being judged by 12 significant digits";

  /** Where the rounding is from. */
  static final String ROUNDING_SOURCE =
      "JCGM 100:2008, 7.2.6; ISO 80000-1:2009, Annex B; pdg: Review of Particle Physics,"
          + " Introduction, 5.3; bench: common practice, no source";

  /** Common practice, no source: a result that says so little is hardly ever written down. */
  private static final double MANY_TIMES = 10;

  private ResultParameters() {}

  static Rounded roundedIn(Arguments arguments) {
    return MeasurementResult.of(arguments.get(VALUE), arguments.get(UNCERTAINTY), "")
        .rounded(arguments.get(DIGITS));
  }

  /** An uncertainty of many times the value, unless that is zero, was meant the other way round. */
  static Optional<Message> doubt(Arguments arguments) {
    double value = Math.abs(arguments.get(VALUE));
    double uncertainty = arguments.get(UNCERTAINTY);
    return value > 0 && uncertainty >= MANY_TIMES * value
        ? Optional.of(Swapped.doubt(UNCERTAINTY, uncertainty, VALUE, value))
        : Optional.empty();
  }
}
