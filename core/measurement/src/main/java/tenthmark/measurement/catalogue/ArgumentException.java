package tenthmark.measurement.catalogue;

import tenthmark.measurement.wording.ExplainedException;
import tenthmark.measurement.wording.Message;

/**
 * An argument that a worksheet function cannot use. The sentence names the argument, what was found
 * and what is allowed.
 */
public final class ArgumentException extends ExplainedException {

  private static final long serialVersionUID = 1L;

  /** Makes the exception from its whole sentence. */
  public ArgumentException(Message sentence) {
    super(sentence);
  }

  /** Makes the exception from the key of its sentence and what fills the gaps. */
  public static ArgumentException of(String key, Object... gaps) {
    return new ArgumentException(Message.of(key, gaps));
  }

  /** Makes the sentence "name is found; it must be allowed." */
  public static ArgumentException notAllowed(Object name, Message found, Message allowed) {
    return of("refused", name, found, allowed);
  }
}
