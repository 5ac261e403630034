package tenthmark.checker.report;

import java.util.Optional;
import tenthmark.measurement.wording.Sentences;

/** What a report says about the program that wrote it. */
public final class Program {

  private Program() {}

  /** What the reports are not for. */
  public static String caution(Sentences texts) {
    return texts.say("report.caution");
  }

  /** Which program wrote a report. */
  public static String written(Sentences texts) {
    return texts.say("report.written", stamp());
  }

  /** Name and version, the latter as the jar carries it. */
  public static String stamp() {
    return "tenthmark-checker "
        + Optional.ofNullable(Program.class.getPackage().getImplementationVersion())
            .orElse("(not packaged)");
  }
}
