package tenthmark.checker.workbook;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.formula.SheetNameFormatter;
import tenthmark.measurement.formula.CellAddress;

/**
 * Turns a formula of an .ods file (OpenFormula: OASIS OpenDocument 1.3, part 4) into the notation
 * of {@link Content.Formula#text()}.
 */
final class OpenFormula {

  private static final Pattern PREFIX = Pattern.compile("^(?<namespace>[A-Za-z][\\w.-]*+):=");

  /** Namespaces that Calc puts before functions which the standard does not define. */
  private static final Pattern FUNCTION_NAMESPACE =
      Pattern.compile(
          "^(?:COM\\.MICROSOFT|ORG\\.LIBREOFFICE|ORG\\.OPENOFFICE|LEGACY)\\.(?<rest>.+)");

  private static final Pattern SHEET =
      Pattern.compile("(?<fixed>\\$?)(?<name>'[^']*+(?:''[^']*+)*+'|[^'.$]*+)\\.(?<cell>[^.]*+)");

  private static final String BROKEN = "#REF!";

  private final String source;
  private final Optional<String> movingSheet;
  private final StringBuilder target = new StringBuilder();
  private int position;

  private OpenFormula(String source, Optional<String> movingSheet) {
    this.source = source;
    this.movingSheet = movingSheet;
  }

  /** The formula without its namespace prefix and its equals sign, in the common notation. */
  static String translate(String formula) {
    return translate(formula, Optional.empty());
  }

  /**
   * The formula of a name. A sheet in it that is not marked as fixed moves with the cell that uses
   * the name: it is left out where it is the sheet on which the name was defined, and the reference
   * is left as it is, which cannot be read, where it is another one.
   */
  static String named(String formula, String base) {
    return translate(formula, Optional.of(base));
  }

  private static String translate(String formula, Optional<String> movingSheet) {
    Matcher prefix = PREFIX.matcher(formula);
    String namespace = prefix.find() ? prefix.group("namespace") : "of";
    String body = prefix.replaceFirst("=").replaceFirst("^=+", "");
    return namespace.equals("msoxl") ? body : new OpenFormula(body, movingSheet).translated();
  }

  /** The cell of an address such as {@code $Sheet1.$B$4}. */
  static Optional<CellAddress> cell(String address) {
    Matcher cell = SHEET.matcher(address);
    return cell.matches()
        ? Optional.of(
            A1.range(bare(cell.group("name")), cell.group("cell").replace("$", "")).first())
        : Optional.empty();
  }

  private String translated() {
    while (position < source.length()) {
      char next = source.charAt(position);
      switch (next) {
        case '"', '\'' -> target.append(quoted(next));
        case '[' -> target.append(reference(bracketed()));
        case '{' -> target.append(array());
        case ';' -> put(',');
        case '!' -> put(' ');
        default -> put(next);
      }
    }
    return FormulaText.renameCalls(target.toString(), OpenFormula::withoutNamespace);
  }

  private void put(char replacement) {
    boolean error = replacement == ' ' && target.length() > 0 && endsInErrorName();
    target.append(error ? '!' : replacement);
    position++;
  }

  /** An exclamation mark ends an error such as #REF! or #DIV/0!, else it is an intersection. */
  private boolean endsInErrorName() {
    int hash = target.lastIndexOf("#");
    return hash >= 0 && target.substring(hash).matches("#(REF|VALUE|DIV/0|NUM|NULL)");
  }

  /** A quoted part, its quotes included; a doubled quote does not end it. */
  private String quoted(char quote) {
    int end = position + 1;
    while (end < source.length()) {
      if (source.charAt(end) == quote) {
        if (end + 1 < source.length() && source.charAt(end + 1) == quote) {
          end++;
        } else {
          break;
        }
      }
      end++;
    }
    String part = source.substring(position, Math.min(end + 1, source.length()));
    position += part.length();
    return part;
  }

  /** What stands between brackets; a bracket within a quoted sheet name does not count. */
  private String bracketed() {
    StringBuilder inside = new StringBuilder();
    position++;
    while (position < source.length() && source.charAt(position) != ']') {
      if (source.charAt(position) == '\'') {
        inside.append(quoted('\''));
      } else {
        inside.append(source.charAt(position++));
      }
    }
    position++;
    return inside.toString();
  }

  /** An inline array: semicolons between columns, bars between rows. */
  private String array() {
    StringBuilder array = new StringBuilder();
    while (position < source.length()) {
      char next = source.charAt(position);
      if (next == '"') {
        array.append(quoted('"'));
        continue;
      }
      array.append(next == ';' ? ',' : next == '|' ? ';' : next);
      position++;
      if (next == '}') {
        break;
      }
    }
    return array.toString();
  }

  private String reference(String inside) {
    if (inside.contains(BROKEN)) {
      return BROKEN;
    }
    int colon = colonOutsideQuotes(inside);
    Matcher first = SHEET.matcher(colon < 0 ? inside : inside.substring(0, colon));
    Matcher last = SHEET.matcher(colon < 0 ? "." : inside.substring(colon + 1));
    if (!first.matches() || !last.matches() || movesWithAnotherSheet(first)) {
      return "[" + inside + "]";
    }
    return sheet(isMoving(first) ? "" : first.group("name"), last.group("name"))
        + first.group("cell")
        + (colon < 0 ? "" : ":" + last.group("cell"));
  }

  private boolean isMoving(Matcher place) {
    return movingSheet.isPresent()
        && place.group("fixed").isEmpty()
        && !place.group("name").isEmpty();
  }

  private boolean movesWithAnotherSheet(Matcher place) {
    return isMoving(place) && !bare(place.group("name")).equalsIgnoreCase(movingSheet.get());
  }

  private static int colonOutsideQuotes(String inside) {
    boolean quoted = false;
    for (int i = 0; i < inside.length(); i++) {
      if (inside.charAt(i) == '\'') {
        quoted = !quoted;
      } else if (inside.charAt(i) == ':' && !quoted) {
        return i;
      }
    }
    return -1;
  }

  private static String sheet(String first, String last) {
    if (first.isEmpty()) {
      return "";
    }
    if (last.isEmpty() || last.equals(first)) {
      return SheetNameFormatter.format(bare(first)) + "!";
    }
    return "'" + (bare(first) + ":" + bare(last)).replace("'", "''") + "'!";
  }

  private static String bare(String name) {
    return name.startsWith("'") ? name.substring(1, name.length() - 1).replace("''", "'") : name;
  }

  private static String withoutNamespace(String function) {
    Matcher namespace = FUNCTION_NAMESPACE.matcher(function.toUpperCase(Locale.ROOT));
    return namespace.matches() ? namespace.group("rest") : function;
  }
}
