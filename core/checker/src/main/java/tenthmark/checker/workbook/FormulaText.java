package tenthmark.checker.workbook;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.measurement.catalogue.Declaration;

/** Spellings of function names in formula text. */
public final class FormulaText {

  /** Most characters of a formula in the spreadsheet programs that allow the fewest. */
  public static final int LONGEST = 8_192;

  private static final String STORED_PREFIX = "TENTHMARK.LAB.";

  /** A quoted text, a quoted sheet name, a bracketed part, or a name that a bracket follows. */
  private static final Pattern TOKEN =
      Pattern.compile(
          "\"[^\"]*+(?:\"\"[^\"]*+)*+\""
              + "|'[^']*+(?:''[^']*+)*+'"
              + "|\\[[^\\]]*+(?:\\]|\\z)"
              + "|(?<name>[\\p{L}_\\\\][\\p{L}\\p{N}_.\\\\]*+)(?=\\s*+\\()"
              + "|[\\p{L}\\p{N}_.\\\\]++");

  /** A quoted text, a quoted sheet name, a bracketed part, an array, or a comma. */
  private static final Pattern COMMA =
      Pattern.compile(
          "\"[^\"]*+(?:\"\"[^\"]*+)*+\"|'[^']*+(?:''[^']*+)*+'"
              + "|\\[[^\\]]*+(?:\\]|\\z)|\\{[^}]*+(?:\\}|\\z)|,");

  private FormulaText() {}

  /** The names of the functions that a formula calls, in order. */
  public static List<String> calls(String formula) {
    return TOKEN
        .matcher(formula)
        .results()
        .map(found -> found.group(1))
        .filter(Objects::nonNull)
        .toList();
  }

  /** Changes the names of the functions that are called and nothing else. */
  public static String renameCalls(String formula, UnaryOperator<String> rename) {
    Matcher token = TOKEN.matcher(formula);
    return token.replaceAll(
        found -> {
          String name = token.group("name");
          return Matcher.quoteReplacement(name == null ? found.group() : rename.apply(name));
        });
  }

  /**
   * The one notation for every format: LAB functions by their display names, which POI's formula
   * parser accepts, while stored names are written in full and in any letter case, some with a
   * prefix of the program that wrote them; unions of ranges as arguments where they are the same.
   */
  static String uniform(String formula) {
    String whole = Unions.asArguments(formula);
    return mayCallLab(whole) ? renameCalls(whole, FormulaText::displayName) : whole;
  }

  /** Arguments parted as an office writes them in most of its languages, and the guides too. */
  static String withSemicolons(String formula) {
    return COMMA
        .matcher(formula)
        .replaceAll(
            found -> found.group().equals(",") ? ";" : Matcher.quoteReplacement(found.group()));
  }

  /** False where no LAB function is called for sure, which is known without taking it apart. */
  static boolean mayCallLab(String formula) {
    return formula.toUpperCase(Locale.ROOT).contains("LAB");
  }

  static boolean isLabInLowerCase(String name) {
    return name.equals(name.toLowerCase(Locale.ROOT)) && !displayName(name).equals(name);
  }

  private static String displayName(String name) {
    String upper = name.toUpperCase(Locale.ROOT);
    int stored = upper.indexOf(STORED_PREFIX);
    if (stored >= 0) {
      return Declaration.DISPLAY_PREFIX + upper.substring(stored + STORED_PREFIX.length());
    }
    int display = upper.lastIndexOf('.') + 1;
    return upper.startsWith(Declaration.DISPLAY_PREFIX, display) ? upper.substring(display) : name;
  }
}
