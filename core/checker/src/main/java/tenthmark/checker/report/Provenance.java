package tenthmark.checker.report;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.measurement.wording.Message;

/**
 * By what and when workbooks were checked, so that a contested grade can be traced.
 *
 * @param checked when, by the clock of the machine
 * @param profile by which; none without one
 * @param remarks the instructor's, if there are any
 */
public record Provenance(
    LocalDateTime checked, Optional<FileStamp> profile, Optional<FileStamp> remarks) {

  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

  /** So many digits of a SHA-256 tell two files of a course apart at a glance. */
  private static final int SHORT = 12;

  /**
   * Which file.
   *
   * @param name of the file
   * @param saved when it was last written
   * @param sha256 of its content, and of what it includes, in hexadecimal digits
   */
  public record FileStamp(String name, LocalDateTime saved, String sha256) {

    /** The first digits of the check sum. */
    public String fingerprint() {
      return sha256.substring(0, SHORT);
    }
  }

  /** The files that decide what a report says, but for the workbook. */
  public List<FileStamp> files() {
    return Stream.of(profile, remarks).flatMap(Optional::stream).toList();
  }

  /** The line that says when and by which profile. */
  public Message line() {
    String at = MINUTE.format(checked.truncatedTo(ChronoUnit.MINUTES));
    return profile
        .map(
            stamp ->
                Message.of(
                    "report.provenance.profile",
                    at,
                    stamp.name(),
                    MINUTE.format(stamp.saved()),
                    stamp.fingerprint()))
        .orElse(Message.of("report.provenance", at));
  }

  /** The lines at the foot of a page. */
  public List<Message> lines() {
    List<Message> lines = new ArrayList<>(List.of(line()));
    remarks.ifPresent(
        stamp ->
            lines.add(
                Message.of(
                    "report.provenance.remarks",
                    stamp.name(),
                    MINUTE.format(stamp.saved()),
                    stamp.fingerprint())));
    return lines;
  }
}
