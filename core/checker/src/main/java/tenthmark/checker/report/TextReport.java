package tenthmark.checker.report;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/**
 * Plain text: one line for each finding that is shown and each file that could not be checked.
 *
 * @param texts what is said, in one language
 */
public record TextReport(Sentences texts) {

  /** How many of those that follow from a finding are named in its line. */
  private static final int FOLLOWING = 5;

  private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]+");

  /** The lines about a file's findings; none for a file without any. */
  public List<String> lines(FileReport report) {
    Excerpt excerpt = report.excerpt();
    return Stream.concat(
            excerpt.findings().stream()
                .filter(finding -> !finding.follows())
                .map(finding -> line(report, finding)),
            excerpt.rest().stream()
                .map(rest -> oneLine(Message.of("text.file", report.file(), rest))))
        .toList();
  }

  private String line(FileReport report, Finding finding) {
    Message line =
        Message.of(
            "text.finding",
            report.file(),
            finding.cell(),
            finding.rule().severity().inWords(),
            finding.rule().id(),
            finding.told(),
            finding.expected(),
            finding.rule().fix());
    Message costs =
        finding.points() == 0
            ? line
            : Message.of("text.finding.points", line, points(Decimals.shortest(finding.points())));
    List<Message> following =
        report.following(finding).stream().limit(FOLLOWING).map(TextReport::brief).toList();
    int more = report.following(finding).size() - following.size();
    if (following.isEmpty()) {
      return oneLine(costs);
    }
    Message shown = Message.joined("list.next", following);
    return oneLine(
        more == 0
            ? Message.of("text.finding.following", costs, shown)
            : Message.of("text.finding.following.more", costs, shown, more));
  }

  private static Message brief(Finding following) {
    return Message.of("text.following", following.cell(), following.rule().id());
  }

  private static Message points(BigDecimal points) {
    return Message.figure(points.stripTrailingZeros().toPlainString());
  }

  /** The lines about what was read in a file, and what was not. */
  public List<String> reading(FileReport report) {
    Message read = ReadingText.brief(List.of(report));
    return Stream.concat(
            Stream.of(read),
            report.contents().coverage().unread().stream().map(ReadingText::unread))
        .map(line -> oneLine(Message.of("text.file", report.file(), line)))
        .toList();
  }

  /** The line about a file that could not be read, in English as all messages. */
  public static String unread(FileReport report) {
    return oneLine(report.file() + ": cannot be read: " + report.problem().orElseThrow());
  }

  /** The line about a file that could not be checked, in English as all messages. */
  public static String failure(FileReport report) {
    return line(report.file(), "cannot be checked: " + report.problem().orElseThrow());
  }

  /** A message about a file or folder. */
  public static String line(Path file, String message) {
    return oneLine(file + ": " + message);
  }

  /** One line about a file that was checked. */
  public String summary(FileReport report) {
    Message counts = counts(List.of(report));
    Message line =
        report.pointsLost().signum() == 0
            ? Message.of("text.file", report.file(), counts)
            : Message.of("text.file.points", report.file(), counts, points(report.pointsLost()));
    return oneLine(Message.of("list.further", line, ReadingText.brief(List.of(report))));
  }

  /** One line about all files. */
  public String summary(List<FileReport> reports) {
    long checked = reports.stream().filter(report -> report.problem().isEmpty()).count();
    long failed = reports.size() - checked;
    Message all = Message.counted("text.files", checked, counts(reports));
    Message told = failed == 0 ? all : Message.of("text.failed", all, failed);
    return oneLine(Message.of("list.further", told, ReadingText.brief(reports)));
  }

  /** How many findings of each severity, such as 2 errors, 0 warnings, 1 note. */
  public static Message counts(List<FileReport> reports) {
    return Message.joined(
        "list.next",
        Arrays.stream(Severity.values())
            .map(severity -> severity.counted(count(reports, severity)))
            .toList());
  }

  private static long count(List<FileReport> reports, Severity severity) {
    return reports.stream().mapToLong(report -> report.count(severity)).sum();
  }

  private String oneLine(Message message) {
    return oneLine(texts.say(message));
  }

  /** Line ends and control characters in a student's text must not forge lines or colours. */
  private static String oneLine(String text) {
    return CONTROL.matcher(text).replaceAll(" ");
  }
}
