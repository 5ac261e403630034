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

  /** No unit of a lab has brackets within brackets within brackets. */
  private static final int DEEPEST = 3;

  /** Far above any unit: the thermal resistance of a plate, kg·m²·s⁻³·K⁻¹, has eight. */
  private static final int MOST_FACTORS = 20;

  /**
   * A part of a unit.
   *
   * @param factors how many symbols it has if each power is written out
   */
  private record Part(MeasurementUnit unit, int factors) {

    Part times(Part other) {
      return new Part(unit.times(other.unit()), factors + other.factors());
    }

    Part power(int exponent) {
      return new Part(unit.power(exponent), factors * Math.abs(exponent));
    }
  }

  private final String text;
  private final UnitSymbols symbols;
  private int place;
  private int depth;

  UnitExpression(String text, UnitSymbols symbols) {
    this.text = text;
    this.symbols = symbols;
  }

  MeasurementUnit read() throws Unreadable {
    Part whole = product();
    if (place < text.length()) {
      throw unreadableHere();
    }
    return whole.unit();
  }

  private Part product() throws Unreadable {
    Part product = factor();
    boolean divided = false;
    while (place < text.length() && text.charAt(place) != ')') {
      boolean divides = accept('/');
      if (!divides && divided) {
        throw new Unreadable("unit.ambiguous", text);
      }
      if (!divides && !accept('·') && !accept(' ') && text.charAt(place) != '(') {
        throw unreadableHere();
      }
      product = bounded(product.times(factor().power(divides ? -1 : 1)));
      divided |= divides;
    }
    return product;
  }

  private Part factor() throws Unreadable {
    return bounded(base().power(exponent()));
  }

  /** Powers of powers would grow beyond what any memory or number holds. */
  private Part bounded(Part part) throws Unreadable {
    if (part.factors() > MOST_FACTORS) {
      throw new Unreadable("unit.powers", text);
    }
    return part;
  }

  private Part base() throws Unreadable {
    if (accept('(')) {
      if (++depth > DEEPEST) {
        throw new Unreadable("unit.deep", text);
      }
      Part inner = product();
      depth--;
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
        .map(unit -> new Part(unit, 1))
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
