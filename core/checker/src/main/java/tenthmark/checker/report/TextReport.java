package tenthmark.checker.report;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.wording.Sentences;

/** Plain text: one line for each finding and each file that could not be checked. */
public final class TextReport {

  private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]+");

  private static final Sentences TEXTS = CheckerTexts.english();

  private TextReport() {}

  /** The lines about a file's findings; none for a file without any. */
  public static List<String> lines(FileReport report) {
    return report.findings().stream().map(finding -> line(report, finding)).toList();
  }

  private static String line(FileReport report, Finding finding) {
    return oneLine(
        report.file()
            + ": "
            + finding.cell()
            + ": "
            + word(finding.rule().severity())
            + " "
            + finding.rule().id()
            + ": "
            + TEXTS.say(finding.found())
            + "; expected: "
            + TEXTS.say(finding.expected())
            + "; to fix: "
            + TEXTS.say(finding.rule().fix())
            + cost(finding));
  }

  private static String cost(Finding finding) {
    return finding.points() == 0
        ? ""
        : " Points lost: " + plain(Decimals.shortest(finding.points()));
  }

  private static String plain(BigDecimal points) {
    return points.stripTrailingZeros().toPlainString();
  }

  /** The line about a file that could not be checked. */
  public static String failure(FileReport report) {
    return oneLine(report.file() + ": cannot be checked: " + report.problem().orElseThrow());
  }

  /** One line about a file that was checked. */
  public static String summary(FileReport report) {
    return oneLine(report.file() + ": " + counts(List.of(report)) + lost(report));
  }

  private static String lost(FileReport report) {
    return report.pointsLost().signum() == 0 ? "" : ", points lost: " + plain(report.pointsLost());
  }

  /** One line about all files. */
  public static String summary(List<FileReport> reports) {
    long checked = reports.stream().filter(report -> report.problem().isEmpty()).count();
    long failed = reports.size() - checked;
    return counted(checked, "file")
        + " checked, "
        + counts(reports)
        + (failed == 0 ? "" : ", " + failed + " could not be checked");
  }

  private static String counts(List<FileReport> reports) {
    return Arrays.stream(Severity.values())
        .map(severity -> counted(count(reports, severity), word(severity)))
        .collect(Collectors.joining(", "));
  }

  private static long count(List<FileReport> reports, Severity severity) {
    return reports.stream().mapToLong(report -> report.count(severity)).sum();
  }

  private static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  /** The word for a severity. */
  public static String word(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }

  /** Line ends and control characters in a student's text must not forge lines or colours. */
  private static String oneLine(String text) {
    return CONTROL.matcher(text).replaceAll(" ");
  }
}
