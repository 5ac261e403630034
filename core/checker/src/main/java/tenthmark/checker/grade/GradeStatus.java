package tenthmark.checker.grade;

import java.util.Locale;
import tenthmark.measurement.wording.Message;

/** Whether there is a score, or why not. */
public enum GradeStatus {
  /** The newest workbook was checked. */
  CHECKED("checked"),
  /** Nothing was handed in. */
  NOTHING("nothing handed in"),
  /** Only files that are no workbooks were handed in. */
  NO_WORKBOOK("no workbook"),
  /** Nothing tells which of several workbooks is the newest. */
  SEVERAL("several workbooks at once"),
  /** The newest workbook could not be checked. */
  UNCHECKED("cannot be checked");

  private final String words;

  GradeStatus(String words) {
    this.words = words;
  }

  /** The words that a page shows. */
  public Message inWords() {
    return Message.of("students.status." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** As tables say it, in English whatever the language of the reports. */
  public String words() {
    return words;
  }
}
