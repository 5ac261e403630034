package tenthmark.checker.rules;

import java.util.Locale;
import tenthmark.measurement.wording.Message;

/** How grave a finding is. */
public enum Severity {
  /** Wrong or missing. */
  ERROR,
  /** Probably wrong. */
  WARNING,
  /** Worth knowing; no fault. */
  NOTE;

  /** The English word, by which profiles and programs name it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The word that a report shows. */
  public Message inWords() {
    return Message.of("severity." + id());
  }

  /** So many findings, such as 2 errors. */
  public Message counted(long findings) {
    return Message.counted("severity." + id(), findings);
  }
}
