package tenthmark.checker.page;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import tenthmark.checker.classroom.Distribution;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;

/** Words and numbers as pages show them. */
final class Wording {

  private static final int DIGITS = 6;

  private Wording() {}

  /** A number to at most six digits. */
  static String number(double number) {
    return number(Decimals.shortest(number));
  }

  /** A number to at most six digits. */
  static String number(BigDecimal number) {
    return PowerOfTen.show(number, DIGITS);
  }

  /** The accepted value of a quantity, if there is one. */
  static Optional<String> accepted(Distribution distribution) {
    return distribution
        .accepted()
        .map(
            accepted ->
                "accepted value "
                    + number(accepted.value())
                    + (accepted.uncertainty() == 0 ? "" : " ± " + number(accepted.uncertainty()))
                    + (distribution.unit().isEmpty() ? "" : " " + distribution.unit()));
  }

  /** How many of something, such as 1 cell or 2 cells. */
  static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  /** How many findings of each severity, such as 2 errors, 0 warnings, 1 note. */
  static String severities(FileReport report) {
    return Arrays.stream(Severity.values())
        .map(severity -> counted(report.count(severity), TextReport.word(severity)))
        .collect(Collectors.joining(", "));
  }

  /** What the convention of a course says. */
  static String convention(Convention convention) {
    return "The convention is "
        + convention.name()
        + ": between wide marks "
        + number(convention.wideFraction())
        + " of a division is read, between fine marks "
        + number(convention.fineFraction())
        + "; contributions are combined "
        + (convention.combine() == Combine.STRAIGHT ? "by adding their sizes" : "in quadrature")
        + "; the reaction time in hand timing is "
        + number(convention.reactionSeconds())
        + " s.";
  }
}
