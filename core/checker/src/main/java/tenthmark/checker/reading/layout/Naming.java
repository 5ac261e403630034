package tenthmark.checker.reading.layout;

import java.util.Locale;
import tenthmark.checker.reading.words.Heading;

/** Whether words name the quantity of a heading. */
final class Naming {

  private Naming() {}

  /** Whether a name is the symbol or the name of a heading's quantity, or one within the other. */
  static boolean matches(Heading heading, String name) {
    if (name.isBlank()) {
      return false;
    }
    return name.equals(heading.symbol())
        || same(name, heading.name())
        || holds(heading.name(), name)
        || holds(name, heading.name())
        || heading.text().startsWith(name)
        || sharesWord(heading.name(), name);
  }

  /** Whether two names share a longer word but for its ending, as the plural has one. */
  private static boolean sharesWord(String one, String other) {
    for (String first : lower(one).split(" ", -1)) {
      for (String second : lower(other).split(" ", -1)) {
        if (isSameButForEnding(first, second)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isSameButForEnding(String one, String other) {
    int shorter = Math.min(one.length(), other.length());
    return shorter >= 4
        && Math.max(one.length(), other.length()) - shorter <= 2
        && one.regionMatches(0, other, 0, shorter);
  }

  private static boolean same(String one, String other) {
    return one.equalsIgnoreCase(other);
  }

  private static boolean holds(String whole, String part) {
    return !part.isBlank() && (" " + lower(whole) + " ").contains(" " + lower(part) + " ");
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
