package tenthmark.checker.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import tenthmark.checker.reading.CoverageSummary;
import tenthmark.checker.reading.NumberRole;
import tenthmark.measurement.wording.Message;

/** What was read, in words. */
public final class ReadingText {

  private ReadingText() {}

  /** How many records were read, and how many numbers were not. */
  public static Message brief(List<FileReport> reports) {
    long records = reports.stream().mapToLong(report -> report.contents().records().size()).sum();
    long unread =
        reports.stream().mapToLong(report -> report.contents().coverage().numbersNotRead()).sum();
    return brief(records, unread);
  }

  /** How many records were read in a workbook, and how many numbers were not. */
  public static Message brief(int records, CoverageSummary coverage) {
    return brief(records, coverage.numbersNotRead());
  }

  private static Message brief(long records, long unread) {
    Message read = Message.counted("reading.records", records);
    return unread == 0
        ? read
        : Message.of("list.next", read, Message.counted("reading.unread", unread));
  }

  /** How many numbers were taken for what. */
  public static Message numbers(CoverageSummary coverage) {
    List<Message> parts = new ArrayList<>();
    parts.add(Message.counted("reading.parts", coverage.inRecords()));
    Arrays.stream(NumberRole.values())
        .filter(role -> coverage.others().containsKey(role))
        .forEach(role -> parts.add(counted(role, coverage.others().get(role))));
    parts.add(Message.counted("reading.unread", coverage.numbersNotRead()));
    return Message.joined("list.next", parts);
  }

  /** What a number stands for, in words. */
  public static Message role(NumberRole role) {
    return Message.of(key(role));
  }

  /** So many numbers of a role. */
  public static Message counted(NumberRole role, long count) {
    return Message.counted(key(role), count);
  }

  /** Where something was not read, and why. */
  public static Message unread(CoverageSummary.Unread unread) {
    return Message.of(
        "reading.unread.where", unread.first().sheet(), unread.places(), unread.why());
  }

  private static String key(NumberRole role) {
    return "role." + role.name().toLowerCase(Locale.ROOT);
  }
}
