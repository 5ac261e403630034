package tenthmark.measurement.catalogue;

/**
 * An argument that a worksheet function cannot use. The message is a plain sentence for the student
 * that names the argument, what was found and what is allowed.
 */
public final class ArgumentException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Makes the exception from its whole sentence. */
  public ArgumentException(String sentence) {
    super(sentence);
  }

  /** Makes the sentence "name is found; it must be allowed." */
  public static ArgumentException notAllowed(String name, String found, String allowed) {
    return new ArgumentException(name + " is " + found + "; it must be " + allowed + ".");
  }
}
