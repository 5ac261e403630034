package tenthmark.measurement.line;

import tenthmark.measurement.wording.ExplainedException;
import tenthmark.measurement.wording.Message;

/** Points that cannot be fitted. The sentence says why. */
public final class FitException extends ExplainedException {

  private static final long serialVersionUID = 1L;

  private FitException(Message sentence) {
    super(sentence);
  }

  /** Makes the exception from the key of its sentence and what fills the gaps. */
  public static FitException of(String key, Object... gaps) {
    return new FitException(Message.of(key, gaps));
  }
}
