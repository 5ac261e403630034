package tenthmark.checker.evaluation;

/** A formula that the checker cannot follow; the message says why. */
final class NotCheckableException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  NotCheckableException(String reason) {
    super(reason);
  }

  NotCheckableException(String reason, Throwable cause) {
    super(reason, cause);
  }

  static NotCheckableException unknownFunction(String name) {
    return new NotCheckableException("the checker does not know the function " + name);
  }

  static NotCheckableException unreadable(RuntimeException cause) {
    return new NotCheckableException(
        "the checker cannot read the formula: " + cause.getMessage(), cause);
  }

  static NotCheckableException tooDeep() {
    return new NotCheckableException("the formula is nested too deeply for the checker");
  }

  static NotCheckableException tooLong(String what, int most) {
    return new NotCheckableException(what + " is longer than " + most + " characters");
  }
}
