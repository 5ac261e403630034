package tenthmark.checker.record;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.checker.unit.UnitReader;

/**
 * A column heading: what it names, and the unit that it states, as in {@code Value (mm)}, {@code
 * value [mm]} or {@code Value / mm}.
 *
 * @param unit empty if the heading states none
 * @param words the words, in lower case
 */
record Heading(Field field, String unit, String words) {

  /** Heads columns of other tables as well. */
  private static final String COMMON_WORD = "total";

  private static final String PLAIN_NAME = "name";

  private static final Pattern PARTS =
      Pattern.compile(
          "(?<words>[^(\\[/]+?)(?:\\((?<round>[^)]*)\\)|\\[(?<square>[^\\]]*)\\]|/(?<slash>.*)"
              + "|\\s(?:in|en)\\s+(?<in>\\S+))?[\\W&&[^(\\[/]]*");

  private static final List<String> UNIT_PARTS = List.of("round", "square", "slash", "in");

  /** What stands before a contribution or an uncertainty and adds nothing to its words. */
  private static final Pattern PLUS_MINUS = Pattern.compile("^±\\s*(?=\\p{L})");

  private static final Pattern PLUS_MINUS_TYPED = Pattern.compile("^\\+/[-−–]");

  /** Short and without words between blanks, so that {@code (both ends)} is no unit. */
  private static final Pattern UNIT =
      Pattern.compile("[\\p{L}°%µΩ][\\p{L}\\p{N}°%µΩ/·.^²³⁻¹*-]{0,11}");

  /** Reads a heading; empty if its words name nothing in a record. */
  static Optional<Heading> read(String text, HeadingWords words) {
    String typed = PLUS_MINUS_TYPED.matcher(text.strip()).replaceFirst("±");
    String bare = PLUS_MINUS.matcher(typed).replaceFirst("");
    Matcher parts = PARTS.matcher(bare);
    if (!parts.matches() || isOtherwiseIn(parts)) {
      return Optional.empty();
    }
    String written = parts.group("words");
    return words
        .named(written)
        .map(field -> new Heading(field, unit(parts), HeadingWords.uniform(written)));
  }

  /** A value's heading that names a symbol and a known unit instead, as in {@code L (mm)}. */
  static Optional<Heading> ofValue(String text) {
    Matcher parts = PARTS.matcher(text.strip());
    return parts.matches()
        ? Optional.of(unit(parts))
            .filter(unit -> UnitReader.STANDARD.read(unit).known().isPresent())
            .map(unit -> new Heading(Field.VALUE, unit, HeadingWords.uniform(parts.group("words"))))
        : Optional.empty();
  }

  /** What a heading below the group's says within the group. */
  Heading within(Optional<Heading> group) {
    return group.isEmpty()
        ? this
        : new Heading(
            field, unit.isEmpty() ? group.get().unit : unit, group.get().words + " " + words);
  }

  /**
   * The unit after a quantity's name, as in {@code Time / s} or {@code Zeit in s}; in round
   * brackets a single letter may be the symbol instead.
   */
  static Optional<String> unitAfter(String quantity) {
    Matcher parts = PARTS.matcher(quantity.strip());
    return parts.matches() && !isSingleLetter(parts.group("round"))
        ? unitAlone(unit(parts))
        : Optional.empty();
  }

  private static boolean isSingleLetter(String inBrackets) {
    return inBrackets != null && inBrackets.strip().length() == 1;
  }

  /** {@code value in mm} states a unit, {@code uncertainty in value} does not. */
  private static boolean isOtherwiseIn(Matcher parts) {
    String unit = parts.group("in");
    return unit != null && unitAlone(unit).isEmpty();
  }

  /** A unit alone, as in the line below the headings, with or without brackets. */
  static Optional<String> unitAlone(String text) {
    String bare = text.strip().replaceFirst("^[(\\[](.*)[)\\]]$", "$1").strip();
    return UnitReader.STANDARD.read(bare).known().map(known -> bare);
  }

  /** Whether it names something measured; a plain name heads lists of constants as well. */
  boolean isOfQuantity() {
    return field == Field.QUANTITY && !words.equals(PLAIN_NAME);
  }

  /** Whether it tells a table of measurements from other lists with values. */
  boolean isTelling() {
    return field.isTelling() && !words.equals(COMMON_WORD);
  }

  private static String unit(Matcher parts) {
    for (String group : UNIT_PARTS) {
      String unit = parts.group(group);
      if (unit != null && UNIT.matcher(unit.strip()).matches()) {
        return unit.strip();
      }
    }
    return "";
  }
}
