package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tenthmark.measurement.formula.Expression.Call;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Reference;

/**
 * A formula that has been read.
 *
 * @param text as it was written
 * @param tree its meaning
 * @param references everything that it refers to, in order
 * @param functions the functions that it calls, in upper case
 */
public record Formula(
    String text, Expression tree, List<Reference> references, Set<String> functions) {

  /** The text without the braces of an array formula. */
  static String withoutBraces(String text) {
    return isArray(text) ? text.substring(1, text.length() - 1) : text;
  }

  private static boolean isArray(String text) {
    return text.startsWith("{=") && text.endsWith("}");
  }

  /** Whether it is an array formula, which is computed with whole ranges. */
  boolean isArray() {
    return isArray(text);
  }

  /** A formula from its meaning. */
  static Formula of(String text, Expression tree) {
    List<Reference> references = new ArrayList<>();
    Set<String> functions = new LinkedHashSet<>();
    collect(tree, references, functions);
    return new Formula(text, tree, List.copyOf(references), Set.copyOf(functions));
  }

  private static void collect(
      Expression expression, List<Reference> references, Set<String> functions) {
    if (expression instanceof Reference reference) {
      references.add(reference);
      return;
    }
    if (expression instanceof Call call) {
      functions.add(call.function().name());
    } else if (expression instanceof ForeignCall call) {
      functions.add(call.name());
    }
    expression.parts().forEach(part -> collect(part, references, functions));
  }
}
