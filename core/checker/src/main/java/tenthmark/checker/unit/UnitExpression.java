package tenthmark.checker.unit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.measurement.wording.Message;

/**
 * Products, quotients and powers of symbols, in the uniform spelling. After a solidus the next
 * factor alone is in the denominator; a further product there is refused, because {@code J/kg·K}
 * can be read in two ways (SI Brochure, 9th edition, 5.4.6).
 */
final class UnitExpression {

  /** No unit, with the reason. */
  static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Message said;

    private Unreadable(String key, String what) {
      this.said = Message.of(key, what);
    }

    Message said() {
      return said;
    }
  }

  private static final Pattern SYMBOL = Pattern.compile("[\\p{L}°%]+|1(?!\\d)");
  private static final Pattern EXPONENT =
      Pattern.compile("\\^?\\(([+-]?\\d)\\)|\\^?([+-]?\\d)(?!\\d)");

  private final String text;
  private final UnitSymbols symbols;
  private int place;

  UnitExpression(String text, UnitSymbols symbols) {
    this.text = text;
    this.symbols = symbols;
  }

  MeasurementUnit read() throws Unreadable {
    MeasurementUnit unit = product();
    if (place < text.length()) {
      throw unreadableHere();
    }
    return unit;
  }

  private MeasurementUnit product() throws Unreadable {
    MeasurementUnit product = factor();
    boolean divided = false;
    while (place < text.length() && text.charAt(place) != ')') {
      boolean divides = accept('/');
      if (!divides && divided) {
        throw new Unreadable("unit.ambiguous", text);
      }
      if (!divides && !accept('·') && !accept(' ') && text.charAt(place) != '(') {
        throw unreadableHere();
      }
      product = product.times(factor().power(divides ? -1 : 1));
      divided |= divides;
    }
    return product;
  }

  private MeasurementUnit factor() throws Unreadable {
    return base().power(exponent());
  }

  private MeasurementUnit base() throws Unreadable {
    if (accept('(')) {
      MeasurementUnit inner = product();
      if (!accept(')')) {
        throw new Unreadable("unit.bracket", text);
      }
      return inner;
    }
    Matcher symbol = SYMBOL.matcher(text).region(place, text.length());
    if (!symbol.lookingAt()) {
      throw unreadableHere();
    }
    place = symbol.end();
    return symbols
        .unit(symbol.group())
        .orElseThrow(() -> new Unreadable("unit.symbol", symbol.group()));
  }

  private int exponent() {
    Matcher exponent = EXPONENT.matcher(text).region(place, text.length());
    if (!exponent.lookingAt()) {
      return 1;
    }
    place = exponent.end();
    return Integer.parseInt(exponent.group(1) == null ? exponent.group(2) : exponent.group(1));
  }

  private boolean accept(char character) {
    boolean there = place < text.length() && text.charAt(place) == character;
    if (there) {
      place++;
    }
    return there;
  }

  private Unreadable unreadableHere() {
    return place < text.length()
        ? new Unreadable("unit.stray", text.substring(place))
        : new Unreadable("unit.short", text);
  }
}
