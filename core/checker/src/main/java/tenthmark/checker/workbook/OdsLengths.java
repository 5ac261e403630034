package tenthmark.checker.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How wide the columns or how high the rows of a sheet are, from the first on, in millimetres: it
 * tells at which cell a drawing lies that is anchored to the page.
 */
final class OdsLengths {

  /** A length with its unit (OASIS OpenDocument 1.3, part 3, 18.3.18). */
  private static final Pattern LENGTH = Pattern.compile("(-?[0-9.]+)(cm|mm|in|pt|pc|px)");

  private static final Map<String, Double> MILLIMETRES =
      Map.of("cm", 10.0, "mm", 1.0, "in", 25.4, "pt", 25.4 / 72, "pc", 25.4 / 6, "px", 25.4 / 96);

  /** So many lines of one length. */
  private record Run(int count, double length) {}

  private final List<Run> runs = new ArrayList<>();

  /** A length in millimetres; 0 for one that is none. */
  static double millimetres(String length) {
    Matcher parts = LENGTH.matcher(length);
    return parts.matches()
        ? Double.parseDouble(parts.group(1)) * MILLIMETRES.get(parts.group(2))
        : 0;
  }

  void add(int count, double length) {
    runs.add(new Run(count, length));
  }

  /** The number of the line in which a distance ends, counted from 0; at most the one after all. */
  int at(double distance) {
    double left = distance;
    int line = 0;
    for (Run run : runs) {
      if (left < run.count() * run.length()) {
        return line + (int) (Math.max(0, left) / run.length());
      }
      left -= run.count() * run.length();
      line += run.count();
    }
    return line;
  }
}
