package tenthmark.checker.report;

import java.util.List;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.wording.Message;

/** A convention in sentences. */
final class ConventionText {

  private ConventionText() {}

  /** What it says. */
  static List<Message> of(Convention convention) {
    Message choices = choices(convention);
    return convention.coverageFactor() == 1
        ? List.of(choices)
        : List.of(
            choices, Message.of("page.convention.coverage", figure(convention.coverageFactor())));
  }

  private static Message choices(Convention convention) {
    return Message.of(
        "page.convention",
        convention.name(),
        figure(convention.wideFraction()),
        figure(convention.fineFraction()),
        Message.of(
            convention.combine() == Combine.STRAIGHT
                ? "page.convention.straight"
                : "page.convention.quadrature"),
        figure(convention.reactionSeconds()));
  }

  private static Message figure(double number) {
    return Message.figure(PowerOfTen.show(Decimals.shortest(number)));
  }
}
