package tenthmark.samples.corpus;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a cell of a drawing is, as it is written: {@code 1.50} is a number shown with two decimals,
 * {@code 1.6e-3} one with a power of ten, {@code 5%} a percentage, {@code 2026-05-12} a date,
 * {@code =B4/C4 :: 0.00} a formula with the format of its number, {@code 1.5 :: 0.0" mm"} a number
 * with a format of its own, and all else a text; an apostrophe before it makes a text of anything.
 *
 * @param content a number, a formula with its equals sign, or a text
 * @param format the number's format
 */
record Drawn(Object content, String format) {

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?\\d+(?:\\.(\\d+))?([eE][-+]?\\d+)?(%)?");
  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
  private static final Pattern FORMATTED = Pattern.compile("(=.*?)\\s+::\\s+(.*)");
  private static final Pattern FORMATTED_NUMBER =
      Pattern.compile("([-+]?\\d+(?:\\.\\d+)?)\\s+::\\s+(.*)");
  private static final String ANY = "General";

  static Drawn of(String written, int row) {
    if (written.startsWith("'")) {
      return new Drawn(written.substring(1), ANY);
    }
    if (written.startsWith("=")) {
      return formula(written.replace("{r}", Integer.toString(row)));
    }
    if (DATE.matcher(written).matches()) {
      return new Drawn(LocalDate.parse(written), "dd/mm/yyyy");
    }
    Matcher formatted = FORMATTED_NUMBER.matcher(written);
    if (formatted.matches()) {
      return new Drawn(new BigDecimal(formatted.group(1)), formatted.group(2));
    }
    Matcher number = NUMBER.matcher(written);
    return number.matches() ? number(number) : new Drawn(written, ANY);
  }

  private static Drawn formula(String written) {
    Matcher formatted = FORMATTED.matcher(written);
    return formatted.matches()
        ? new Drawn(formatted.group(1), formatted.group(2))
        : new Drawn(written, ANY);
  }

  private static Drawn number(Matcher number) {
    String digits = number.group();
    String decimals = number.group(1);
    String format = decimals == null ? "0" : "0." + "0".repeat(decimals.length());
    if (number.group(3) != null) {
      BigDecimal percent = new BigDecimal(digits.substring(0, digits.length() - 1));
      return new Drawn(percent.movePointLeft(2), format + "%");
    }
    if (number.group(2) != null) {
      return new Drawn(new BigDecimal(digits), format + "E+00");
    }
    return new Drawn(new BigDecimal(digits), decimals == null ? ANY : format);
  }
}
