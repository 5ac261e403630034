package tenthmark.measurement.wording;

/** Something that cannot be done. A plain sentence tells the student why. */
public abstract class ExplainedException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Message said;

  /** Makes the exception from its whole sentence. */
  protected ExplainedException(Message said) {
    super(null, null);
    this.said = said;
  }

  /** The sentence, to be said in any language. */
  public Message said() {
    return said;
  }

  /** The sentence in English. */
  @Override
  public String getMessage() {
    return said.toString();
  }
}
