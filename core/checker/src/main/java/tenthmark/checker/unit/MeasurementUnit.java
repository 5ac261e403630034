package tenthmark.checker.unit;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.measure.Dimension;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.UnitDimension;
import tech.units.indriya.unit.Units;

/**
 * A unit of measurement. Angles have no dimension in the SI (SI Brochure, 9th edition, 5.4.8), so
 * that rad/s and Hz would be one unit; here they are told apart, because an angular speed and the
 * frequency of the turns differ by 2 pi. A turn counts as one beside Hz or 1/s and as 2 pi beside
 * rad or a degree.
 */
public final class MeasurementUnit {

  private final Unit<?> unit;
  private final int turns;
  private final boolean angular;
  private final boolean hertz;

  /**
   * @param unit as if a turn were one
   * @param turns the exponent of the turn
   * @param angular whether it names an angle other than the turn
   * @param hertz whether it names the hertz
   */
  MeasurementUnit(Unit<?> unit, int turns, boolean angular, boolean hertz) {
    this.unit = unit;
    this.turns = turns;
    this.angular = angular;
    this.hertz = hertz;
  }

  MeasurementUnit times(MeasurementUnit other) {
    return new MeasurementUnit(
        withoutOffset().multiply(other.withoutOffset()),
        turns + other.turns,
        angular || other.angular,
        hertz || other.hertz);
  }

  /** The unit times a power of ten. */
  MeasurementUnit scaled(int exponent) {
    Unit<?> scaled =
        exponent < 0
            ? withoutOffset().divide(Math.pow(10, -exponent))
            : withoutOffset().multiply(Math.pow(10, exponent));
    return new MeasurementUnit(scaled, turns, angular, hertz);
  }

  MeasurementUnit power(int exponent) {
    return exponent == 1
        ? this
        : new MeasurementUnit(withoutOffset().pow(exponent), turns * exponent, angular, hertz);
  }

  /** In a product a degree of a temperature scale is a difference. */
  private Unit<?> withoutOffset() {
    if (unit.equals(Units.CELSIUS)) {
      return Units.KELVIN;
    }
    return unit.equals(USCustomary.FAHRENHEIT) ? USCustomary.RANKINE : unit;
  }

  /** The conversion to another unit; empty if they measure different kinds of quantity. */
  public Optional<Conversion> to(MeasurementUnit other) {
    if ((angular && other.hertz) || (hertz && other.angular)) {
      return Optional.empty();
    }
    boolean asAngle = angular || other.angular;
    Unit<?> from = counting(asAngle);
    Unit<?> target = other.counting(asAngle);
    try {
      return from.isCompatible(target)
          ? Optional.of(new Conversion(from.getConverterToAny(target)))
          : Optional.empty();
    } catch (IncommensurableException impossible) {
      throw new IllegalStateException(from + " and " + target, impossible);
    }
  }

  private Unit<?> counting(boolean asAngle) {
    return asAngle && turns != 0 ? unit.multiply(USCustomary.REVOLUTION.pow(turns)) : unit;
  }

  /** The unit as a product of base units; of a temperature scale its difference of a degree. */
  public Measure measure() {
    Unit<?> plain = withoutOffset();
    Map<String, Double> dimensions = new TreeMap<>();
    Map<? extends Dimension, Integer> bases = plain.getDimension().getBaseDimensions();
    if (bases != null) {
      bases.forEach((base, exponent) -> dimensions.put(base.toString(), (double) exponent));
    } else if (!plain.getDimension().equals(UnitDimension.NONE)) {
      dimensions.put(plain.getDimension().toString(), 1.0);
    }
    return new Measure(factor(plain), dimensions);
  }

  private static double factor(Unit<?> plain) {
    try {
      return plain.getConverterToAny(plain.getSystemUnit()).convert(1.0);
    } catch (IncommensurableException impossible) {
      throw new IllegalStateException(plain.toString(), impossible);
    }
  }

  /** Whether it is another spelling of the same unit. */
  public boolean isSameAs(MeasurementUnit other) {
    return to(other).filter(Conversion::isIdentity).isPresent();
  }
}
