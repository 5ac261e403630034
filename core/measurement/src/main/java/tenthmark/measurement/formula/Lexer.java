package tenthmark.measurement.formula;

import java.util.function.IntPredicate;
import tenthmark.measurement.formula.Token.Kind;

/** Cuts a formula's text into its pieces. */
final class Lexer {

  private static final String SIGNS = "+-*/^%&=<>();,:!.#{}~|";

  private final String text;
  private int position;

  Lexer(String text, int start) {
    this.text = text;
    this.position = start;
  }

  Token next() {
    skip(c -> Character.isWhitespace(c) || Character.isSpaceChar(c));
    int start = position;
    int first = peek(0);
    if (first < 0) {
      return token(Kind.END, "", start);
    }
    if (isDigit(first) || (first == '.' && isDigit(peek(1)))) {
      return number();
    }
    if (first == '"') {
      return token(Kind.TEXT, quoted('"'), start);
    }
    if (first == '\'' || (first == '$' && peek(1) == '\'')) {
      skip(c -> c == '$');
      return token(Kind.SHEET, quoted('\''), start);
    }
    if (first == '[') {
      return bracketed();
    }
    if (isWordStart(first)) {
      skip(Lexer::isWordPart);
      return token(Kind.WORD, text.substring(start, position), start);
    }
    return sign();
  }

  private Token number() {
    int start = position;
    skip(Lexer::isDigit);
    if (peek(0) == '.') {
      position++;
      skip(Lexer::isDigit);
    }
    if (peek(0) == 'e' || peek(0) == 'E') {
      int signs = peek(1) == '+' || peek(1) == '-' ? 1 : 0;
      if (isDigit(peek(1 + signs))) {
        position += 1 + signs;
        skip(Lexer::isDigit);
      }
    }
    return token(Kind.NUMBER, text.substring(start, position), start);
  }

  /** The text up to the closing quote; a doubled quote stands for one. */
  private String quoted(char quote) {
    int start = position;
    StringBuilder content = new StringBuilder();
    for (position++; position < text.length(); position++) {
      if (text.charAt(position) == quote) {
        if (peek(1) != quote) {
          position++;
          return content.toString();
        }
        position++;
      }
      content.append(text.charAt(position));
    }
    throw FormulaException.of("formula.quote", start + 1);
  }

  private Token bracketed() {
    int start = position;
    boolean inQuotes = false;
    for (position++; position < text.length(); position++) {
      char c = text.charAt(position);
      inQuotes ^= c == '\'';
      if (c == ']' && !inQuotes) {
        position++;
        return token(Kind.BRACKETED, text.substring(start + 1, position - 1), start);
      }
    }
    throw FormulaException.of("formula.bracket", start + 1);
  }

  private Token sign() {
    int start = position;
    int first = text.codePointAt(start);
    if (SIGNS.indexOf(first) < 0) {
      throw FormulaException.of("formula.character", Character.toString(first), start + 1);
    }
    position++;
    boolean pair = first == '<' && (peek(0) == '>' || peek(0) == '=');
    if (pair || (first == '>' && peek(0) == '=')) {
      position++;
    }
    return token(Kind.SIGN, text.substring(start, position), start);
  }

  private static Token token(Kind kind, String text, int start) {
    return new Token(kind, text, start + 1);
  }

  private void skip(IntPredicate wanted) {
    while (position < text.length() && wanted.test(text.charAt(position))) {
      position++;
    }
  }

  private int peek(int ahead) {
    return position + ahead < text.length() ? text.charAt(position + ahead) : -1;
  }

  private static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isWordStart(int c) {
    return Character.isLetter(c) || c == '_' || c == '$';
  }

  private static boolean isWordPart(int c) {
    return isWordStart(c)
        || isDigit(c)
        || c == '.'
        || Character.getType(c) == Character.NON_SPACING_MARK;
  }
}
