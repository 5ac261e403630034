package tenthmark.measurement.formula;

/**
 * Formulas as the office hands them over, in the notation of files. They differ in arrays that are
 * written in a formula: the office has semicolons between columns and bars between rows, files have
 * commas and semicolons.
 */
public final class OfficeNotation {

  private OfficeNotation() {}

  /** The formula with its arrays as files write them; texts and names of sheets stay. */
  public static String asInFiles(String formula) {
    if (formula.indexOf('{', 1) < 0) {
      return formula;
    }
    StringBuilder changed = new StringBuilder(formula);
    int depth = formula.startsWith("{=") ? -1 : 0;
    char quote = 0;
    for (int i = 0; i < formula.length(); i++) {
      char c = formula.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '{') {
        depth++;
      } else if (c == '}') {
        depth--;
      } else if (depth > 0 && (c == ';' || c == '|')) {
        changed.setCharAt(i, c == ';' ? ',' : ';');
      }
    }
    return changed.toString();
  }
}
