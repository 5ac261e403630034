package tenthmark.checker.page;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.classroom.Distribution;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/**
 * Words and numbers as pages show them.
 *
 * @param texts what is said, in one language
 */
record Wording(Sentences texts) {

  private static final int DIGITS = 6;

  /** What is said, with what fills its gaps. */
  String say(String key, Object... gaps) {
    return say(Message.of(key, gaps));
  }

  /** Several without gaps. */
  List<String> sayAll(String... keys) {
    return Stream.of(keys).map(key -> say(key)).toList();
  }

  /** What is said. */
  String say(Message message) {
    return texts.say(message);
  }

  /** A number to at most six digits. */
  static Message figure(double number) {
    return figure(Decimals.shortest(number));
  }

  /** A number to at most six digits. */
  static Message figure(BigDecimal number) {
    return Message.figure(PowerOfTen.show(number, DIGITS));
  }

  /** A number to at most six digits. */
  String number(double number) {
    return say(figure(number));
  }

  /** A number to at most six digits. */
  String number(BigDecimal number) {
    return say(figure(number));
  }

  /** The accepted value of a quantity, if there is one. */
  static Optional<Message> accepted(Distribution distribution) {
    return distribution
        .accepted()
        .map(accepted -> value(accepted.value(), accepted.uncertainty()))
        .map(
            value ->
                distribution.unit().isEmpty()
                    ? value
                    : Message.of("quantity", value, distribution.unit()));
  }

  private static Message value(double value, double uncertainty) {
    return uncertainty == 0
        ? figure(value)
        : Message.of("value.uncertain", figure(value), figure(uncertainty));
  }
}
