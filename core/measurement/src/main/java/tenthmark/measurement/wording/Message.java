package tenthmark.measurement.wording;

import java.util.List;
import java.util.stream.Stream;

/**
 * A sentence, or a part of one, before it is said in a language.
 *
 * @param key of the sentence
 * @param gaps what fills its numbered gaps: other messages, figures, and texts that are the same in
 *     every language
 */
public record Message(String key, List<Object> gaps) {

  /** Digits with a decimal point, which becomes the decimal sign of the numbers around them. */
  public record Figure(String digits) {}

  /** Copies the gaps; what is no message and no figure is a text. */
  public Message {
    gaps = gaps.stream().map(Message::gap).toList();
  }

  private static Object gap(Object gap) {
    return gap instanceof Message || gap instanceof Figure ? gap : gap.toString();
  }

  /** A sentence with its gaps. */
  public static Message of(String key, Object... gaps) {
    return new Message(key, List.of(gaps));
  }

  /** What is the same in every language, such as a name. */
  public static Message verbatim(Object text) {
    return of("verbatim", text);
  }

  /**
   * So many things, whose sentences have the endings {@code one} and {@code many}.
   *
   * @param more what fills the gaps after that of the number
   */
  public static Message counted(String key, long count, Object... more) {
    List<Object> gaps = Stream.concat(Stream.of(count), Stream.of(more)).toList();
    return new Message(key + (count == 1 ? ".one" : ".many"), gaps);
  }

  /** A number as a sentence of its own. */
  public static Message figure(String digits) {
    return verbatim(new Figure(digits));
  }

  /** Several in a row: the sentence with this key puts one in front of the next. */
  public static Message joined(String key, List<Message> parts) {
    int half = parts.size() / 2;
    return parts.size() == 1
        ? parts.get(0)
        : of(
            key,
            joined(key, parts.subList(0, half)),
            joined(key, parts.subList(half, parts.size())));
  }

  /** In English, if it is a sentence of this module; another module's as its key and gaps. */
  @Override
  public String toString() {
    Sentences english = Sentences.english();
    return english.knows(key) ? english.say(this) : key + gaps;
  }
}
