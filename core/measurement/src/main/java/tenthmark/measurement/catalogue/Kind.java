package tenthmark.measurement.catalogue;

import java.util.function.Function;
import tenthmark.measurement.wording.Message;

/**
 * What a parameter accepts: how it is read from a cell value, and the allowed range in words.
 *
 * @param <T> the type that the function works with
 */
public final class Kind<T> {

  /** How the argument reaches the function. */
  public enum Form {
    /** One cell or a literal. */
    SINGLE,
    /**
     * One cell or a literal that holds a text. The number zero counts as blank, since that is how
     * Calc hands over a blank cell that stands alone.
     */
    TEXT,
    /** One cell, a literal or a range, as values. */
    RANGE,
    /** The cells themselves; a literal is not possible. */
    REFERENCE
  }

  private final Form form;
  private final Message allowed;
  private final Function<Argument, T> reader;

  /**
   * A kind of parameter.
   *
   * @param allowed what is allowed, to follow "it must be"
   * @param reader reads an argument that is not blank, and throws {@link ArgumentException}
   */
  public Kind(Form form, Message allowed, Function<Argument, T> reader) {
    this.form = form;
    this.allowed = allowed;
    this.reader = reader;
  }

  /** How the argument reaches the function. */
  public Form form() {
    return form;
  }

  /** What is allowed, in words that follow "it must be". */
  public Message allowed() {
    return allowed;
  }

  /**
   * Reads an argument that is not blank where a blank one has a meaning.
   *
   * @throws ArgumentException if it is not of this kind
   */
  public T read(Argument argument) {
    return reader.apply(argument);
  }
}
