package tenthmark.checker.workbook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A formula that an .xlsx file writes once for several cells; in the others its relative references
 * move along (ECMA-376, part 1, 18.3.1.40).
 *
 * @param text as the first cell has it
 * @param column of the first cell
 * @param row of the first cell
 */
record SharedFormula(String text, int column, int row) {

  /** Texts, quoted sheets and brackets stay as they are; so do names, functions and sheets. */
  private static final Pattern TOKEN =
      Pattern.compile(
          "\"[^\"]*+\"|'[^']*+'|\\[[^\\]]*+(?:\\]|\\z)"
              + "|(?<![\\p{L}\\p{N}_.$])(?:"
              + "(?<absCol>\\$?)(?<col>[A-Za-z]{1,3})(?<absRow>\\$?)(?<row>[0-9]{1,7})"
              + "|(?<fromAbs>\\$?)(?<from>[A-Za-z]{1,3}):(?<toAbs>\\$?)(?<to>[A-Za-z]{1,3})"
              + "|(?<topAbs>\\$?)(?<top>[0-9]{1,7}):(?<endAbs>\\$?)(?<end>[0-9]{1,7})"
              + ")(?![\\p{L}\\p{N}_.$!]|\\s*+\\()"
              + "|[\\p{L}\\p{N}_.$\\\\]++");

  /** The formula as another cell has it. */
  String at(int otherColumn, int otherRow) {
    int right = otherColumn - column;
    int down = otherRow - row;
    Matcher token = TOKEN.matcher(text);
    return token.replaceAll(found -> Matcher.quoteReplacement(moved(token, right, down)));
  }

  private static String moved(Matcher found, int right, int down) {
    if (found.group("col") != null) {
      return column(found.group("absCol"), found.group("col"), right)
          + row(found.group("absRow"), found.group("row"), down);
    }
    if (found.group("from") != null) {
      return column(found.group("fromAbs"), found.group("from"), right)
          + ":"
          + column(found.group("toAbs"), found.group("to"), right);
    }
    if (found.group("top") != null) {
      return row(found.group("topAbs"), found.group("top"), down)
          + ":"
          + row(found.group("endAbs"), found.group("end"), down);
    }
    return found.group();
  }

  /** References go round at the edge of the sheet, as they do where the formula is copied. */
  private static String column(String fixed, String letters, int right) {
    if (!fixed.isEmpty() || !A1.isColumn(letters)) {
      return fixed + letters;
    }
    return A1.letters(Math.floorMod(A1.column(letters) + right, Limits.COLUMNS));
  }

  private static String row(String fixed, String number, int down) {
    return fixed.isEmpty()
        ? String.valueOf(Math.floorMod(Integer.parseInt(number) - 1 + down, Limits.ROWS) + 1)
        : fixed + number;
  }
}
