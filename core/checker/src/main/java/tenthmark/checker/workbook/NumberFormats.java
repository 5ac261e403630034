package tenthmark.checker.workbook;

import java.util.regex.Pattern;

/** What number formats say of the numbers that they show. */
final class NumberFormats {

  private static final Pattern LITERAL = Pattern.compile("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]");

  private NumberFormats() {}

  /** Whether a format shows a number in percent; a sign that is only written beside it does not. */
  static boolean isPercent(String format) {
    return LITERAL.matcher(format).replaceAll("").indexOf('%') >= 0;
  }
}
