package tenthmark.checker.evaluation;

import tenthmark.measurement.wording.Message;

/** A formula that the checker cannot follow; the sentence says why. */
final class NotCheckableException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Message said;

  private NotCheckableException(Message said, Throwable cause) {
    super(null, cause);
    this.said = said;
  }

  static NotCheckableException of(String key, Object... gaps) {
    return new NotCheckableException(Message.of(key, gaps), null);
  }

  static NotCheckableException because(Throwable cause, String key, Object... gaps) {
    return new NotCheckableException(Message.of(key, gaps), cause);
  }

  static NotCheckableException unknownFunction(String name) {
    return of("reason.function", name);
  }

  /** Without the words of the library that reads formulas, which are no one's language. */
  static NotCheckableException unreadable(RuntimeException cause) {
    return because(cause, "reason.unreadable");
  }

  static NotCheckableException tooDeep() {
    return of("reason.deep");
  }

  Message said() {
    return said;
  }

  @Override
  public String getMessage() {
    return said.toString();
  }
}
