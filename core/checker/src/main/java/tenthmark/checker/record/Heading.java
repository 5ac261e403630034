package tenthmark.checker.record;

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
          "(?<words>[^(\\[/]+)(?:\\((?<round>[^)]*)\\)|\\[(?<square>[^\\]]*)\\]|/(?<slash>.*))?\\W*");

  /** Short and without words between blanks, so that {@code (both ends)} is no unit. */
  private static final Pattern UNIT =
      Pattern.compile("[\\p{L}°%µΩ][\\p{L}\\p{N}°%µΩ/·.^²³⁻¹*-]{0,11}");

  /** Reads a heading; empty if its words name nothing in a record. */
  static Optional<Heading> read(String text, HeadingWords words) {
    Matcher parts = PARTS.matcher(text.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    String written = parts.group("words");
    return words
        .named(written)
        .map(field -> new Heading(field, unit(parts), HeadingWords.uniform(written)));
  }

  /** What a heading below the group's says within the group. */
  Heading within(Optional<Heading> group) {
    return group.isEmpty()
        ? this
        : new Heading(
            field, unit.isEmpty() ? group.get().unit : unit, group.get().words + " " + words);
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
    for (String group : new String[] {"round", "square", "slash"}) {
      String unit = parts.group(group);
      if (unit != null && UNIT.matcher(unit.strip()).matches()) {
        return unit.strip();
      }
    }
    return "";
  }
}
