package tenthmark.addin.menu;

import java.util.List;
import tenthmark.measurement.wording.Sentences;

/** A command cannot be done as things are, and the user can change that. */
public final class RefusalException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String key;
  private final transient List<String> gaps;

  /**
   * With the sentence that tells why.
   *
   * @param key of the sentence
   * @param gaps what fills its gaps
   */
  public RefusalException(String key, String... gaps) {
    super(key);
    this.key = key;
    this.gaps = List.of(gaps);
  }

  /** The sentence in a language. */
  String sentence(Sentences texts) {
    return texts.say(key, gaps.toArray(String[]::new));
  }
}
