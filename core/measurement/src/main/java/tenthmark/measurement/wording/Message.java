package tenthmark.measurement.wording;

import java.util.List;

/**
 * A sentence, or a part of one, before it is said in a language.
 *
 * @param key of the sentence
 * @param gaps what fills its numbered gaps: other messages, figures, and what is the same in every
 *     language
 */
public record Message(String key, List<Object> gaps) {

  /** Digits with a decimal point, which becomes the decimal sign of the numbers around them. */
  public record Figure(String digits) {}

  /** Copies the gaps. */
  public Message {
    gaps = List.copyOf(gaps);
  }

  /** A sentence with its gaps. */
  public static Message of(String key, Object... gaps) {
    return new Message(key, List.of(gaps));
  }

  /** What is the same in every language, such as a name. */
  public static Message verbatim(Object text) {
    return of("verbatim", text);
  }

  /** So many things, whose sentences have the endings {@code one} and {@code many}. */
  public static Message counted(String key, int count) {
    return of(key + (count == 1 ? ".one" : ".many"), count);
  }

  /** In English. */
  @Override
  public String toString() {
    return Sentences.english().say(this);
  }
}
