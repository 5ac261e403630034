package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.measurement.formula.Expression.Link;
import tenthmark.measurement.formula.Expression.Reference;
import tenthmark.measurement.formula.Token.Kind;

/**
 * Reads the spreadsheet formula language, as Calc shows it, as .xlsx and as .ods store it. From
 * loose to tight: comparison, joining of texts, sum, product, power, percent, sign; operators of
 * one level work off from the left, so that {@code -2^2} is 4 and {@code 2^3^2} is 64.
 */
final class FormulaParser {

  private static final Pattern START = Pattern.compile("\\s*(?:of:|oooc:|msoxl:)?=?");
  private static final int DEEPEST = 64;
  private static final int LONGEST = 8192;

  private static final Map<String, Binary> COMPARISONS =
      Map.of(
          "=", Binary.EQUAL,
          "<>", Binary.NOT_EQUAL,
          "<", Binary.LESS,
          "<=", Binary.LESS_OR_EQUAL,
          ">", Binary.GREATER,
          ">=", Binary.GREATER_OR_EQUAL);
  private static final Map<String, Binary> SUMS = Map.of("+", Binary.ADD, "-", Binary.SUBTRACT);
  private static final Map<String, Binary> PRODUCTS =
      Map.of("*", Binary.MULTIPLY, "/", Binary.DIVIDE);
  private static final Map<String, Binary> POWERS = Map.of("^", Binary.POWER);

  private final Functions functions;
  private final boolean cells;
  private final String written;
  private final String text;
  private final Lexer lexer;
  private final References places;
  private Token token;
  private int depth;

  private FormulaParser(
      Functions functions, String written, boolean cells, Displacement displacement) {
    this.functions = functions;
    this.cells = cells;
    this.written = written;
    this.text = Formula.withoutBraces(written);
    this.places = new References(displacement);
    Matcher start = START.matcher(text);
    this.lexer = new Lexer(text, start.lookingAt() ? start.end() : 0);
  }

  /** Reads the formula of a cell. */
  static Formula readCell(String text, Functions functions) {
    return new FormulaParser(functions, text, true, Displacement.NONE).read();
  }

  /** Reads the formula of a cell that was written for another one. */
  static Formula readElsewhere(String text, Functions functions, Displacement displacement) {
    return new FormulaParser(functions, text, true, displacement).read();
  }

  /** Reads a formula in which every word that is not a function is the name of an input. */
  static Formula readNames(String text, Functions functions) {
    return new FormulaParser(functions, text, false, Displacement.NONE).read();
  }

  private Formula read() {
    if (text.length() > LONGEST) {
      throw FormulaException.of("formula.long", LONGEST);
    }
    advance();
    Expression tree = comparison();
    if (token.kind() != Kind.END) {
      throw unexpected();
    }
    return Formula.of(written, tree);
  }

  private Expression comparison() {
    Expression left = joined();
    int levels = 0;
    while (token.kind() == Kind.SIGN && COMPARISONS.containsKey(token.text())) {
      Binary operator = COMPARISONS.get(token.text());
      advance();
      deeper();
      levels++;
      left = new Expression.Compared(left, operator, joined());
    }
    depth -= levels;
    return left;
  }

  private Expression joined() {
    Expression left = sum();
    while (token.isSign("&")) {
      advance();
      left = new Expression.Joined(left, sum());
    }
    return left;
  }

  private Expression sum() {
    return chain(SUMS, this::product);
  }

  private Expression product() {
    return chain(PRODUCTS, this::power);
  }

  private Expression power() {
    return chain(POWERS, this::percent);
  }

  private Expression chain(Map<String, Binary> operators, Supplier<Expression> operand) {
    Expression first = operand.get();
    List<Link> rest = null;
    while (token.kind() == Kind.SIGN && operators.containsKey(token.text())) {
      Binary operator = operators.get(token.text());
      advance();
      rest = rest == null ? new ArrayList<>() : rest;
      rest.add(new Link(operator, operand.get()));
    }
    return rest == null ? first : new Expression.Chain(first, rest);
  }

  private Expression percent() {
    Expression operand = signed();
    if (!token.isSign("%")) {
      return operand;
    }
    List<Link> divisions = new ArrayList<>();
    while (token.isSign("%")) {
      advance();
      divisions.add(new Link(Binary.DIVIDE, new Expression.Constant(100)));
    }
    return new Expression.Chain(operand, divisions);
  }

  private Expression signed() {
    boolean negative = false;
    while (token.isSign("-") || token.isSign("+")) {
      negative ^= token.isSign("-");
      advance();
    }
    Expression operand = union();
    return negative ? new Expression.Negative(operand) : operand;
  }

  private Expression union() {
    Expression first = intersection();
    if (!token.isSign("~")) {
      return first;
    }
    List<Expression> parts = new ArrayList<>(List.of(first));
    while (token.isSign("~")) {
      advance();
      parts.add(intersection());
    }
    return new Expression.Union(parts);
  }

  /** Written with an exclamation mark in Calc, and with a space in other programs. */
  private Expression intersection() {
    Expression left = primary();
    while (cells && left instanceof Reference && (token.isSign("!") || isOperand(token))) {
      if (token.isSign("!")) {
        advance();
      }
      Expression right = primary();
      if (!(right instanceof Reference)) {
        throw FormulaException.of("formula.union");
      }
      left = new Expression.Intersection(left, right);
    }
    return left;
  }

  private static boolean isOperand(Token token) {
    return token.kind() == Kind.WORD
        || token.kind() == Kind.SHEET
        || token.kind() == Kind.BRACKETED;
  }

  private Expression primary() {
    Token first = token;
    return switch (first.kind()) {
      case NUMBER -> number();
      case TEXT -> {
        advance();
        yield new Expression.Text(first.text());
      }
      case WORD -> word();
      case SHEET -> {
        advance();
        yield onSheet(first);
      }
      case BRACKETED -> {
        advance();
        yield bracketed(first);
      }
      default -> {
        if (first.isSign("(")) {
          yield parenthesised();
        }
        if (first.isSign("{") && cells) {
          yield array();
        }
        throw unexpected();
      }
    };
  }

  private Expression number() {
    Token first = token;
    advance();
    if (token.isSign(":") && cells) {
      return range(null, first.text());
    }
    double value = Double.parseDouble(first.text());
    if (Double.isInfinite(value)) {
      throw FormulaException.of("formula.number.large", first.text());
    }
    return new Expression.Constant(value);
  }

  /** As files write it: commas between columns, semicolons between rows. */
  private Expression array() {
    List<List<Expression>> rows = new ArrayList<>();
    do {
      advance();
      List<Expression> row = new ArrayList<>(List.of(element()));
      while (token.isSign(",")) {
        advance();
        row.add(element());
      }
      rows.add(row);
      if (row.size() != rows.get(0).size()) {
        throw unexpected();
      }
    } while (token.isSign(";"));
    expect("}");
    return new Expression.Array(rows);
  }

  private Expression element() {
    boolean negative = token.isSign("-");
    if (negative || token.isSign("+")) {
      advance();
    }
    boolean logical =
        token.text().equalsIgnoreCase("TRUE") || token.text().equalsIgnoreCase("FALSE");
    if (token.kind() != Kind.NUMBER && token.kind() != Kind.TEXT && !logical) {
      throw unexpected();
    }
    Expression element = primary();
    return negative && element instanceof Expression.Constant constant
        ? new Expression.Constant(-constant.value())
        : element;
  }

  private Expression parenthesised() {
    advance();
    deeper();
    Expression content = comparison();
    depth--;
    if (cells && token.isSign(",")) {
      return unionInParentheses(content);
    }
    expect(")");
    return content;
  }

  private Expression unionInParentheses(Expression first) {
    List<Expression> parts = new ArrayList<>(List.of(first));
    while (token.isSign(",")) {
      advance();
      parts.add(union());
    }
    expect(")");
    if (!parts.stream().allMatch(Reference.class::isInstance)) {
      throw FormulaException.of("formula.union");
    }
    return new Expression.Union(parts);
  }

  private Expression word() {
    String word = token.text();
    advance();
    if (token.isSign("(")) {
      return call(word);
    }
    if (word.equalsIgnoreCase("TRUE") || word.equalsIgnoreCase("FALSE")) {
      return new Expression.Constant(word.equalsIgnoreCase("TRUE") ? 1 : 0);
    }
    return cells ? inDocument(word) : new Expression.Name(word);
  }

  private Expression inDocument(String word) {
    Optional<Expression> cell = token.isSign("!") ? cellOrRange(null, word) : Optional.empty();
    if (cell.isPresent()) {
      return cell.get();
    }
    if (token.isSign("!")) {
      advance();
      return corner(References.sheetName(word));
    }
    if (token.kind() == Kind.BRACKETED) {
      throw FormulaException.of("formula.table", word);
    }
    int dot = word.lastIndexOf('.');
    if (dot > 0) {
      Optional<Expression> found =
          cellOrRange(places.sheet(word.substring(0, dot)), word.substring(dot + 1));
      if (found.isPresent()) {
        return found.get();
      }
    }
    return cellOrRange(null, word).orElseGet(() -> new Expression.Name(word));
  }

  private Expression onSheet(Token sheet) {
    if (token.isSign("#")) {
      throw FormulaException.of("formula.file", sheet.text());
    }
    boolean dot = token.isSign(".");
    if (!cells || (!token.isSign("!") && !dot)) {
      throw unexpected();
    }
    advance();
    boolean fixed = text.charAt(sheet.position() - 1) == '$';
    return corner(dot && !fixed ? places.relative(sheet.text()) : sheet.text());
  }

  private Expression corner(String sheet) {
    String word = cornerWord();
    return cellOrRange(sheet, word).orElseGet(() -> new Expression.Name(sheet, word));
  }

  private String cornerWord() {
    Token corner = token;
    if (corner.kind() != Kind.WORD && corner.kind() != Kind.NUMBER) {
      throw unexpected();
    }
    advance();
    return corner.text();
  }

  private Optional<Expression> cellOrRange(String sheet, String word) {
    if (token.isSign(":")) {
      return Optional.of(range(sheet, word));
    }
    return places.cell(sheet, word).map(Expression.class::cast);
  }

  private Expression range(String sheet, String from) {
    advance();
    String to = token.kind() == Kind.SHEET ? quotedSheetCorner(sheet) : cornerWord();
    References.Part last =
        to.lastIndexOf('.') > 0 ? References.Part.of(to) : new References.Part(sheet, to);
    if (token.isSign("!") && places.cell(null, to).isEmpty()) {
      advance();
      last = new References.Part(References.sheetName(to), cornerWord());
    }
    boolean oneSheet = last.sheet() == null || last.sheet().equals(sheet);
    if (!oneSheet) {
      throw FormulaException.of("formula.sheets");
    }
    String corner = last.corner();
    return places
        .range(sheet, from, corner)
        .map(Expression.class::cast)
        .orElseThrow(() -> FormulaException.of("formula.no.range", from + ":" + corner));
  }

  private String quotedSheetCorner(String sheet) {
    String last = token.text();
    advance();
    if (!last.equals(sheet)) {
      throw FormulaException.of("formula.sheets");
    }
    advance();
    return cornerWord();
  }

  private Expression bracketed(Token bracketed) {
    if (!cells) {
      throw unexpected();
    }
    if (bracketed.text().contains("#")) {
      throw FormulaException.of(
          bracketed.text().contains("#REF!") ? "formula.lost" : "formula.file.unnamed");
    }
    return places
        .bracketed(bracketed.text())
        .map(Expression.class::cast)
        .orElseThrow(() -> FormulaException.of("formula.no.place", bracketed.text()));
  }

  private Expression call(String name) {
    List<Expression> arguments = arguments();
    String plain = Functions.plain(name);
    Optional<Function> function = functions.find(plain);
    if (function.isEmpty()) {
      return new Expression.ForeignCall(plain, arguments);
    }
    requireCount(function.get(), arguments.size());
    return new Expression.Call(function.get(), arguments);
  }

  private List<Expression> arguments() {
    advance();
    deeper();
    List<Expression> arguments = new ArrayList<>();
    if (!token.isSign(")")) {
      arguments.add(argument());
      while (token.isSign(";") || token.isSign(",")) {
        advance();
        arguments.add(argument());
      }
    }
    depth--;
    expect(")");
    return arguments;
  }

  private Expression argument() {
    return token.isSign(";") || token.isSign(",") || token.isSign(")")
        ? new Expression.Omitted()
        : comparison();
  }

  private static void requireCount(Function function, int count) {
    if (!function.arity().allows(count)) {
      throw FormulaException.of(
          "formula.arguments", function.name(), count, function.arity().inWords());
    }
  }

  private void deeper() {
    if (++depth > DEEPEST) {
      throw FormulaException.of("formula.deep", DEEPEST);
    }
  }

  private void expect(String sign) {
    if (!token.isSign(sign)) {
      throw unexpected();
    }
    advance();
  }

  private void advance() {
    token = lexer.next();
  }

  private FormulaException unexpected() {
    if (token.kind() == Kind.END) {
      return FormulaException.of("formula.short");
    }
    String hint =
        switch (token.text()) {
          case "," -> ".comma";
          case "{" -> ".array";
          case "#" -> ".error";
          default -> "";
        };
    return FormulaException.of("formula.unexpected" + hint, token.position(), token.text());
  }
}
