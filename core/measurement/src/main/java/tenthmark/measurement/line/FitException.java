package tenthmark.measurement.line;

/** Points that cannot be fitted. The message is a plain sentence that says why. */
public final class FitException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Makes the exception from its sentence. */
  public FitException(String sentence) {
    super(sentence);
  }
}
