package tenthmark.checker.report;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import tenthmark.measurement.wording.Message;

/**
 * By what and when workbooks were checked, so that a contested grade can be traced.
 *
 * @param checked when, by the clock of the machine
 * @param profile by which; none without one
 */
public record Provenance(LocalDateTime checked, Optional<ProfileStamp> profile) {

  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

  /** So many digits of a SHA-256 tell two profiles of a course apart at a glance. */
  private static final int SHORT = 12;

  /**
   * Which profile.
   *
   * @param name of its file
   * @param saved when the file was last written
   * @param sha256 of its content, in hexadecimal digits
   */
  public record ProfileStamp(String name, LocalDateTime saved, String sha256) {

    /** The first digits of the check sum. */
    public String fingerprint() {
      return sha256.substring(0, SHORT);
    }
  }

  /** The line at the foot of a page. */
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
}
