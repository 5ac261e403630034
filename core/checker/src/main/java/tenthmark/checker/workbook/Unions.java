package tenthmark.checker.workbook;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Unions of ranges, which Calc writes {@code A1:A3~C1:C3} into .ods and .xlsx files alike and Excel
 * {@code (A1:A3,C1:C3)}. Within a function of any number of ranges they are the same as one
 * argument after another; elsewhere that would give the function other arguments.
 */
final class Unions {

  private static final Set<String> OF_ANY_NUMBER =
      Set.of(
          "SUM", "SUMSQ", "PRODUCT", "AVERAGE", "MEDIAN", "MIN", "MAX", "COUNT", "COUNTA", "STDEV",
          "STDEV.S", "STDEVP", "STDEV.P", "VAR", "VAR.S", "VARP", "VAR.P", "DEVSQ", "AVEDEV");

  private static final String PLAIN = "[\\p{L}\\p{N}$:!.,~_ ]*+";

  private static final String REFERENCES = PLAIN + "(?:'[^']*+'" + PLAIN + ")*+";

  /** A quoted text, a quoted sheet name, a call of nothing but references, or another name. */
  private static final Pattern CALL =
      Pattern.compile(
          "\"[^\"]*+\"|'[^']*+'|(?<name>[\\p{L}_][\\p{L}\\p{N}_.]*+)(?:\\((?<arguments>"
              + REFERENCES
              + ")\\)|\\(\\((?<union>"
              + REFERENCES
              + ")\\)\\))|[\\p{L}\\p{N}_.]++");

  private static final Pattern SIGN = Pattern.compile("'[^']*+'|~");

  private Unions() {}

  /** A formula without unions where arguments are the same. */
  static String asArguments(String formula) {
    if (formula.indexOf('~') < 0 && !formula.contains("((")) {
      return formula;
    }
    Matcher call = CALL.matcher(formula);
    return call.replaceAll(
        found -> {
          String name = call.group("name");
          boolean same = name != null && OF_ANY_NUMBER.contains(name.toUpperCase(Locale.ROOT));
          String inside =
              call.group("union") == null ? call.group("arguments") : call.group("union");
          return Matcher.quoteReplacement(
              same ? name + "(" + withCommas(inside) + ")" : found.group());
        });
  }

  private static String withCommas(String references) {
    return SIGN.matcher(references)
        .replaceAll(
            found -> Matcher.quoteReplacement(found.group().equals("~") ? "," : found.group()));
  }
}
