package tenthmark.checker.submission;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A part of a path that a pattern names. */
enum Part {
  /** Of the student: has a digit. */
  ID(Part::isId),
  /** Of the student, as one text. */
  NAME(Part::isText),
  /** The student's first name. */
  FIRST(Part::isText),
  /** The student's last name. */
  LAST(Part::isText),
  /** Of the course. */
  SECTION(Part::isText),
  /** A number. */
  ATTEMPT(text -> text.matches("[0-9]{1,6}")),
  /** A date, with a time of day or without. */
  TIME(text -> HandInTime.read(text).isPresent()),
  /** Whatever else. */
  ANY(text -> true);

  private static final Map<String, Part> BY_WORD =
      Arrays.stream(values()).collect(Collectors.toMap(Part::word, Function.identity()));

  private final Predicate<String> holds;

  Part(Predicate<String> holds) {
    this.holds = holds;
  }

  /** The part that a word in braces stands for; null if there is none. */
  static Part of(String word) {
    return BY_WORD.get(word);
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  boolean holds(String text) {
    return holds.test(text);
  }

  private static boolean isId(String text) {
    return text.matches("[\\p{L}\\p{N}.@-]{1,64}") && text.chars().anyMatch(Character::isDigit);
  }

  private static boolean isText(String text) {
    return !text.isBlank();
  }
}
