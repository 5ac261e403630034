package tenthmark.measurement.formula;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A number in another unit. Only units that are defined exactly (BIPM, The International System of
 * Units, 9th edition, 2019, tables 4, 7 and 8; inch, nautical mile and knot by the agreements of
 * 1959 and 1929): for others, such as a calorie, Calc has factors of its own.
 */
record Conversion() implements Function {

  private enum Quantity {
    LENGTH,
    AREA,
    VOLUME,
    MASS,
    TIME,
    SPEED,
    FORCE,
    PRESSURE,
    ENERGY,
    POWER,
    FIELD,
    TEMPERATURE
  }

  /**
   * A unit.
   *
   * @param factor one of it in the first unit of its quantity
   * @param offset its zero there
   */
  private record Unit(Quantity quantity, double factor, double offset) {

    Unit(Quantity quantity, double factor) {
      this(quantity, factor, 0);
    }
  }

  private static final Map<String, Double> PREFIXES =
      Map.ofEntries(
          Map.entry("G", 1e9),
          Map.entry("M", 1e6),
          Map.entry("k", 1e3),
          Map.entry("h", 1e2),
          Map.entry("d", 1e-1),
          Map.entry("c", 1e-2),
          Map.entry("m", 1e-3),
          Map.entry("u", 1e-6),
          Map.entry("n", 1e-9),
          Map.entry("p", 1e-12));

  private static final Map<String, Unit> WITH_PREFIX =
      Map.ofEntries(
          Map.entry("m", new Unit(Quantity.LENGTH, 1)),
          Map.entry("l", new Unit(Quantity.VOLUME, 1e-3)),
          Map.entry("L", new Unit(Quantity.VOLUME, 1e-3)),
          Map.entry("g", new Unit(Quantity.MASS, 1e-3)),
          Map.entry("s", new Unit(Quantity.TIME, 1)),
          Map.entry("sec", new Unit(Quantity.TIME, 1)),
          Map.entry("m/s", new Unit(Quantity.SPEED, 1)),
          Map.entry("m/h", new Unit(Quantity.SPEED, 1 / 3600.0)),
          Map.entry("N", new Unit(Quantity.FORCE, 1)),
          Map.entry("Pa", new Unit(Quantity.PRESSURE, 1)),
          Map.entry("J", new Unit(Quantity.ENERGY, 1)),
          Map.entry("Wh", new Unit(Quantity.ENERGY, 3600)),
          Map.entry("W", new Unit(Quantity.POWER, 1)),
          Map.entry("T", new Unit(Quantity.FIELD, 1)),
          Map.entry("K", new Unit(Quantity.TEMPERATURE, 1, -273.15)));

  private static final Map<String, Unit> ALONE =
      Map.ofEntries(
          Map.entry("in", new Unit(Quantity.LENGTH, 0.0254)),
          Map.entry("ft", new Unit(Quantity.LENGTH, 0.3048)),
          Map.entry("yd", new Unit(Quantity.LENGTH, 0.9144)),
          Map.entry("mi", new Unit(Quantity.LENGTH, 1609.344)),
          Map.entry("Nmi", new Unit(Quantity.LENGTH, 1852)),
          Map.entry("ang", new Unit(Quantity.LENGTH, 1e-10)),
          Map.entry("m2", new Unit(Quantity.AREA, 1)),
          Map.entry("cm2", new Unit(Quantity.AREA, 1e-4)),
          Map.entry("mm2", new Unit(Quantity.AREA, 1e-6)),
          Map.entry("in2", new Unit(Quantity.AREA, 0.00064516)),
          Map.entry("ft2", new Unit(Quantity.AREA, 0.09290304)),
          Map.entry("ar", new Unit(Quantity.AREA, 100)),
          Map.entry("ha", new Unit(Quantity.AREA, 10_000)),
          Map.entry("m3", new Unit(Quantity.VOLUME, 1)),
          Map.entry("dm3", new Unit(Quantity.VOLUME, 1e-3)),
          Map.entry("cm3", new Unit(Quantity.VOLUME, 1e-6)),
          Map.entry("mm3", new Unit(Quantity.VOLUME, 1e-9)),
          Map.entry("in3", new Unit(Quantity.VOLUME, 1.6387064e-5)),
          Map.entry("ft3", new Unit(Quantity.VOLUME, 0.028316846592)),
          Map.entry("mn", new Unit(Quantity.TIME, 60)),
          Map.entry("min", new Unit(Quantity.TIME, 60)),
          Map.entry("hr", new Unit(Quantity.TIME, 3600)),
          Map.entry("day", new Unit(Quantity.TIME, 86_400)),
          Map.entry("mph", new Unit(Quantity.SPEED, 0.44704)),
          Map.entry("kn", new Unit(Quantity.SPEED, 1852 / 3600.0)),
          Map.entry("dyn", new Unit(Quantity.FORCE, 1e-5)),
          Map.entry("e", new Unit(Quantity.ENERGY, 1e-7)),
          Map.entry("ga", new Unit(Quantity.FIELD, 1e-4)),
          Map.entry("kel", new Unit(Quantity.TEMPERATURE, 1, -273.15)),
          Map.entry("C", new Unit(Quantity.TEMPERATURE, 1)),
          Map.entry("F", new Unit(Quantity.TEMPERATURE, 5 / 9.0, -160 / 9.0)));

  @Override
  public String name() {
    return "CONVERT";
  }

  @Override
  public Arity arity() {
    return Arity.exactly(3);
  }

  @Override
  public boolean takesOne(int index) {
    return true;
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    String fromName = text(evaluator, arguments.get(1));
    String toName = text(evaluator, arguments.get(2));
    Unit from = unit(fromName);
    Unit to = unit(toName);
    if (from.quantity() != to.quantity()) {
      throw FormulaException.ofError("formula.units", fromName, toName);
    }
    Field<T> field = evaluator.field();
    T turned =
        field.apply(
            Binary.MULTIPLY,
            evaluator.number(arguments.get(0)),
            field.constant(from.factor() / to.factor()));
    double offset = (from.offset() - to.offset()) / to.factor();
    return new Operand.Number<>(field.apply(Binary.ADD, turned, field.constant(offset)));
  }

  private static <T> String text(Evaluator<T> evaluator, Expression argument) {
    if (evaluator.operand(argument) instanceof Operand.Text<T> text) {
      return text.text();
    }
    throw FormulaException.ofError("formula.unit.text");
  }

  private static Unit unit(String name) {
    return Optional.ofNullable(ALONE.get(name))
        .or(() -> Optional.ofNullable(WITH_PREFIX.get(name)))
        .or(() -> prefixed(name))
        .orElseThrow(() -> FormulaException.of("formula.unit", name));
  }

  private static Optional<Unit> prefixed(String name) {
    if (name.length() < 2) {
      return Optional.empty();
    }
    Double prefix = PREFIXES.get(name.substring(0, 1));
    Unit unit = WITH_PREFIX.get(name.substring(1));
    return prefix == null || unit == null
        ? Optional.empty()
        : Optional.of(new Unit(unit.quantity(), prefix * unit.factor(), unit.offset()));
  }
}
