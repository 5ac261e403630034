package tenthmark.addin;

import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.catalogue.Declaration;

/** A function call as a formula, with the stored name that files hold. */
record Call(Declaration declaration, List<String> arguments) {

  /** The call that a function's example shows. */
  static Call example(Declaration declaration) {
    String formula = declaration.example().formula();
    String start = "=" + declaration.displayName() + "(";
    if (!formula.startsWith(start) || !formula.endsWith(")")) {
      throw new IllegalArgumentException("not one call: " + formula);
    }
    return new Call(
        declaration, arguments(formula.substring(start.length(), formula.length() - 1)));
  }

  static Call of(Declaration declaration, String... arguments) {
    return new Call(declaration, List.of(arguments));
  }

  Call with(int index, String argument) {
    List<String> changed = new ArrayList<>(arguments);
    changed.set(index, argument);
    return new Call(declaration, changed);
  }

  String formula() {
    return "=" + declaration.storedName() + "(" + String.join(";", arguments) + ")";
  }

  private static List<String> arguments(String text) {
    List<String> arguments = new ArrayList<>();
    boolean quoted = false;
    int depth = 0;
    int start = 0;
    for (int i = 0; i < text.length(); i++) {
      char sign = text.charAt(i);
      quoted ^= sign == '"';
      depth += quoted ? 0 : step(sign);
      if (sign == ';' && !quoted && depth == 0) {
        arguments.add(text.substring(start, i));
        start = i + 1;
      }
    }
    arguments.add(text.substring(start));
    return arguments;
  }

  private static int step(char sign) {
    return switch (sign) {
      case '(', '{' -> 1;
      case ')', '}' -> -1;
      default -> 0;
    };
  }
}
