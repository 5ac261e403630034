package tenthmark.checker.profile;

import java.util.function.DoublePredicate;

/** The numbers that a key allows. */
enum Range {
  ANY("a finite number", Double::isFinite),
  POSITIVE("greater than 0", number -> number > 0 && Double.isFinite(number)),
  NOT_NEGATIVE("0 or greater", number -> number >= 0 && Double.isFinite(number)),
  FRACTION("greater than 0 and at most 1", number -> number > 0 && number <= 1),
  FACTOR("at least 1 and at most 10", number -> number >= 1 && number <= 10);

  private final String words;
  private final DoublePredicate allows;

  Range(String words, DoublePredicate allows) {
    this.words = words;
    this.allows = allows;
  }

  String words() {
    return words;
  }

  boolean allows(double number) {
    return allows.test(number);
  }
}
