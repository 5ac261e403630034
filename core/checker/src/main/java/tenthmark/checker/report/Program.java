package tenthmark.checker.report;

import java.util.Optional;

/** What a report says about the program that wrote it. */
public final class Program {

  /** What the reports are not for. */
  public static final String CAUTION =
      "Tenthmark is a teaching aid. It is not for calibration, safety or legal decisions. Work on"
          + " brakes, tyres and anything under pressure follows the maker's manual and the lab's"
          + " safety rules; local codes and licensed practice come first.";

  private Program() {}

  /** Name and version, the latter as the jar carries it. */
  public static String stamp() {
    return "tenthmark-checker "
        + Optional.ofNullable(Program.class.getPackage().getImplementationVersion())
            .orElse("(not packaged)");
  }
}
