package tenthmark.checker.unit;

import static javax.measure.MetricPrefix.MILLI;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Force;
import javax.measure.quantity.Pressure;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.format.SimpleUnitFormat;
import tech.units.indriya.unit.Units;

/** The symbols of single units: those of the library's format, and what students write besides. */
final class UnitSymbols {

  private static final Unit<Pressure> BAR = Units.PASCAL.multiply(100_000);

  /** The pound mass under standard gravity 9.80665 m/s² (NIST SP 811, B.8; from memory). */
  private static final Unit<Force> POUND_FORCE =
      USCustomary.POUND
          .multiply(9.80665)
          .multiply(Units.METRE_PER_SQUARE_SECOND)
          .asType(Force.class);

  private static final Map<String, MeasurementUnit> FURTHER =
      Map.ofEntries(
          plain("1", AbstractUnit.ONE),
          plain("ppm", AbstractUnit.ONE.divide(1_000_000)),
          plain("bar", BAR),
          plain("mbar", MILLI(BAR)),
          plain("t", Units.KILOGRAM.multiply(1000)),
          plain("dpt", AbstractUnit.ONE.divide(Units.METRE)),
          plain("δ", AbstractUnit.ONE.divide(Units.METRE)),
          plain("in", USCustomary.INCH),
          plain("ft", USCustomary.FOOT),
          plain("yd", USCustomary.YARD),
          plain("mi", USCustomary.MILE),
          plain("lb", USCustomary.POUND),
          plain("oz", USCustomary.OUNCE),
          plain("lbf", POUND_FORCE),
          plain("psi", POUND_FORCE.divide(USCustomary.INCH.pow(2))),
          plain("°F", USCustomary.FAHRENHEIT),
          Map.entry("°", new MeasurementUnit(USCustomary.DEGREE_ANGLE, 0, true, false)),
          Map.entry("rev", new MeasurementUnit(AbstractUnit.ONE, 1, false, false)),
          Map.entry(
              "rpm", new MeasurementUnit(AbstractUnit.ONE.divide(Units.MINUTE), 1, false, false)));

  private final SimpleUnitFormat format = SimpleUnitFormat.getNewInstance();
  private final Properties spellings = load();

  private static Map.Entry<String, MeasurementUnit> plain(String symbol, Unit<?> unit) {
    return Map.entry(symbol, new MeasurementUnit(unit, 0, false, false));
  }

  private static Properties load() {
    Properties spellings = new Properties();
    try (InputStream file = UnitSymbols.class.getResourceAsStream("spellings.properties");
        Reader text = new InputStreamReader(file, StandardCharsets.UTF_8)) {
      spellings.load(text);
      return spellings;
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Another spelling of a whole unit in symbols, or the text itself. */
  String spelled(String text) {
    return spellings.getProperty(text, text);
  }

  /** The unit of a symbol with or without a prefix. */
  Optional<MeasurementUnit> unit(String symbol) {
    String litre = symbol.endsWith("L") ? symbol.substring(0, symbol.length() - 1) + "l" : symbol;
    String micro = litre.startsWith("u") && litre.length() > 1 ? "µ" + litre.substring(1) : litre;
    return Stream.of(symbol, litre, micro)
        .flatMap(spelling -> exactly(spelling).stream())
        .findFirst();
  }

  private Optional<MeasurementUnit> exactly(String symbol) {
    return Optional.ofNullable(FURTHER.get(symbol)).or(() -> parsed(symbol));
  }

  private Optional<MeasurementUnit> parsed(String symbol) {
    try {
      Unit<?> unit = format.parse(symbol);
      Unit<?> coherent = unit.getSystemUnit();
      return Optional.of(
          new MeasurementUnit(
              unit, 0, coherent.equals(Units.RADIAN), coherent.equals(Units.HERTZ)));
    } catch (MeasurementParseException unknown) {
      return Optional.empty();
    }
  }
}
