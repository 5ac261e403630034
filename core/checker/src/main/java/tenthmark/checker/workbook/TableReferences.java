package tenthmark.checker.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * References by the names of tables and their columns, such as {@code Reads[Value]} and {@code
 * Reads[[#This Row],[Value]]}, as the ranges that they stand for (ECMA-376, part 1, 18.17.2.3 and
 * 18.5). What is no table, column or row of the workbook stays as it is written.
 */
final class TableReferences {

  /** A bracket; apostrophes stand before characters that mean themselves. */
  private static final String BRACKET = "\\[(?:'.|[^\\[\\]'])*+\\]";

  /** A quoted text, a quoted sheet name, the file in a reference to another, or another name. */
  private static final Pattern TOKEN =
      Pattern.compile(
          "\"[^\"]*+(?:\"\"[^\"]*+)*+\"|'[^']*+(?:''[^']*+)*+'|\\[[^\\]]*+(?:\\]|\\z)"
              + "|(?<table>[\\p{L}_\\\\][\\p{L}\\p{N}_.\\\\]*+)\\[(?<inside>@?+\\s*+"
              + BRACKET
              + "(?:\\s*+[,:]\\s*+"
              + BRACKET
              + ")*+\\s*+|(?:'.|[^\\[\\]'])*+)\\]"
              + "|[\\p{L}\\p{N}_.\\\\!]++");

  private static final Pattern PART = Pattern.compile("(?<!')" + BRACKET);

  private final Map<String, XlsxTable> tables = new HashMap<>();

  void add(XlsxTable table) {
    tables.putIfAbsent(table.name().toLowerCase(Locale.ROOT), table);
  }

  /**
   * A formula with ranges for references to tables.
   *
   * @param sheet where the formula stands; empty if it is that of a name
   * @param row where the formula stands, counted from 0; -1 if it is that of a name
   */
  String asRanges(String formula, String sheet, int row) {
    if (tables.isEmpty() || formula.indexOf('[') < 0 || formula.length() > FormulaText.LONGEST) {
      return formula;
    }
    Matcher token = TOKEN.matcher(formula);
    return token.replaceAll(
        found ->
            Matcher.quoteReplacement(
                Optional.ofNullable(token.group("table"))
                    .map(name -> tables.get(name.toLowerCase(Locale.ROOT)))
                    .flatMap(table -> range(table, token.group("inside").strip(), sheet, row))
                    .orElse(found.group())));
  }

  private static Optional<String> range(XlsxTable table, String inside, String sheet, int row) {
    boolean thisRow = inside.startsWith("@");
    String named = thisRow ? inside.substring(1).strip() : inside;
    List<String> keywords = new ArrayList<>(thisRow ? List.of("#this row") : List.of());
    List<String> columns = new ArrayList<>();
    for (String part : parts(named)) {
      if (part.startsWith("#")) {
        keywords.add(part.toLowerCase(Locale.ROOT));
      } else {
        columns.add(part.replaceAll("'(.)", "$1"));
      }
    }
    return table.range(keywords, columns, sheet, row);
  }

  /** What stands in brackets of its own, or the one thing that stands there without. */
  private static List<String> parts(String named) {
    if (!named.startsWith("[")) {
      return named.isEmpty() ? List.of() : List.of(named);
    }
    return PART.matcher(named)
        .results()
        .map(found -> found.group().substring(1, found.group().length() - 1))
        .toList();
  }
}
