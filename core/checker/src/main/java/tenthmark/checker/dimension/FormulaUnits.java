package tenthmark.checker.dimension;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.unit.Measure;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.formula.Binary;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Names;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.wording.Message;

/**
 * Carries the units of records through the workbook's own formulas. Where a unit is not known, or a
 * function is none that units are defined for, nothing is said of what follows from it. A number
 * written in a formula has no unit, but may convert one: of {@code d/10} with d in mm the result
 * may be in mm or in cm.
 */
public final class FormulaUnits {

  private static final int DIGITS = 3;

  /** Cells without a unit of their own, one behind the other, that are followed. */
  private static final int DEEPEST = 50;

  private static final String PERCENT = "%";
  private static final Set<String> SAME_UNIT =
      Set.of(
          "SUM",
          "AVERAGE",
          "AVERAGEA",
          "MEDIAN",
          "MIN",
          "MAX",
          "STDEV",
          "STDEVP",
          "TRIMMEAN",
          "AVEDEV",
          "LARGE",
          "SMALL");
  private static final Set<String> OF_FIRST =
      Set.of("ABS", "ROUND", "ROUNDUP", "ROUNDDOWN", "TRUNC", "INT", "IFERROR");
  private static final Set<String> OF_ANGLE = Set.of("SIN", "COS", "TAN");
  private static final Set<String> PURE =
      Set.of(
          "ASIN", "ACOS", "ATAN", "ATAN2", "COUNT", "COUNTA", "ROWS", "CORREL", "RSQ", "LN", "LOG",
          "LOG10");

  private final Workbook workbook;
  private final Set<CellAddress> counts;
  private final Formulas formulas = new Formulas();
  private final Names names;
  private final Map<CellAddress, Optional<Term>> known = new HashMap<>();
  private final Map<CellRange, Optional<Term>> ranges = new HashMap<>();
  private final Set<CellAddress> open = new HashSet<>();
  private final List<UnitFault> faults = new ArrayList<>();

  /**
   * The units of a workbook.
   *
   * @param counts the cells that hold how often something was done, which has no unit
   */
  public FormulaUnits(
      Workbook workbook,
      Evaluation evaluation,
      List<MeasurementRecord> records,
      Set<CellAddress> counts) {
    this.workbook = workbook;
    this.counts = counts;
    this.names = new Names(evaluation.cells(), formulas);
    for (MeasurementRecord record : records) {
      for (Field field : List.of(Field.REPEAT, Field.UNCERTAINTY, Field.VALUE)) {
        record
            .place(field)
            .ifPresent(cell -> stated(record, field).ifPresent(unit -> known.put(cell, unit)));
      }
    }
  }

  /** The unit that a record states; nothing is known of a percentage, which a format may make. */
  private static Optional<Optional<Term>> stated(MeasurementRecord record, Field field) {
    String own = field == Field.VALUE ? "" : record.unit(field);
    String unit = own.isEmpty() ? record.unit() : own;
    return unit.isEmpty() ? Optional.empty() : Optional.of(term(unit));
  }

  private static Optional<Term> term(String unit) {
    return UnitReader.STANDARD
        .read(unit)
        .known()
        .filter(read -> !unit.contains(PERCENT))
        .map(read -> read.measure())
        .map(measure -> unit.equals("1") ? Term.PURE : Term.of(measure, unit));
  }

  /** What does not fit in a record's value or on the way to it, each time once. */
  public List<UnitFault> faults(MeasurementRecord record) {
    faults.clear();
    Optional<Cell> cell =
        record.cell(Field.VALUE).filter(held -> held.content() instanceof Content.Formula);
    if (cell.isEmpty()) {
      return List.of();
    }
    Optional<Term> stated = known.getOrDefault(cell.get().address(), Optional.empty());
    Optional<Term> computed = ofFormula(cell.get());
    if (stated.isPresent()
        && computed.filter(term -> !term.literal() && !term.isPercentage()).isPresent()) {
      compare(computed.get(), stated.get(), cell.get());
    }
    return List.copyOf(faults);
  }

  /** Whether the formula of a record's value is known to give something in a unit. */
  public boolean givesUnit(MeasurementRecord record) {
    return record
        .cell(Field.VALUE)
        .filter(held -> held.content() instanceof Content.Formula)
        .flatMap(this::ofFormula)
        .filter(term -> !term.measure().dimensions().isEmpty())
        .isPresent();
  }

  private void compare(Term computed, Term stated, Cell cell) {
    if (!computed.measure().isLike(stated.measure())) {
      fault(
          cell,
          computed.mayHideUnit(),
          Message.of("unit-unlike-formula.kind", shown(cell), computed.shown(), stated.shown()),
          Message.of("unit-unlike-formula.kind.expected", stated.shown()));
    } else if (!computed.fits(stated.measure())) {
      fault(
          cell,
          computed.mayHideUnit(),
          Message.of("unit-unlike-formula.size", shown(cell), computed.shown(), stated.shown()),
          Message.of(
              "unit-unlike-formula.size.expected",
              computed.shown(),
              figure(computed.measure().over(stated.measure())),
              stated.shown()));
    } else if (computed.isConvertedInVain(stated.measure())) {
      fault(
          cell,
          true,
          Message.of("unit-unlike-formula.vain", shown(cell), stated.shown()),
          Message.of("unit-unlike-formula.vain.expected", stated.shown()));
    }
  }

  private static String shown(Cell cell) {
    return ((Content.Formula) cell.content()).shown();
  }

  private static Message figure(double number) {
    return Message.figure(PowerOfTen.show(Decimals.shortest(number), DIGITS));
  }

  private void fault(Cell cell, boolean inDoubt, Message found, Message expected) {
    faults.add(new UnitFault(cell, found, expected, !inDoubt));
  }

  private Optional<Term> ofCell(CellAddress address) {
    if (known.containsKey(address)) {
      return known.get(address);
    }
    if (counts.contains(address)) {
      return Optional.of(Term.PURE);
    }
    Optional<Cell> cell = workbook.at(address);
    if (cell.isEmpty() || !(cell.get().content() instanceof Content.Formula)) {
      return Optional.empty();
    }
    Optional<Term> term = ofFormula(cell.get());
    known.put(address, term);
    return term;
  }

  private Optional<Term> ofFormula(Cell cell) {
    Content.Formula formula = (Content.Formula) cell.content();
    if (formula.array().isPresent() || open.size() > DEEPEST || !open.add(cell.address())) {
      return Optional.empty();
    }
    try {
      Expression tree =
          names.replaced(formulas.inCell("=" + formula.text()).tree(), cell.address());
      return new Walk(cell).of(tree);
    } catch (FormulaException unreadable) {
      return Optional.empty();
    } finally {
      open.remove(cell.address());
    }
  }

  /**
   * The unit that the cells of a range have in common; those of unknown unit say nothing, nor do
   * counts, which nobody averages or fits without a unit in mind.
   */
  private Optional<Term> common(CellRange range) {
    Optional<Term> before = ranges.get(range);
    if (before == null) {
      before = foundInCommon(range);
      ranges.put(range, before);
    }
    return before;
  }

  private Optional<Term> foundInCommon(CellRange range) {
    List<Term> units =
        workbook.sheet(range.sheet()).stream()
            .flatMap(sheet -> sheet.cells(range))
            .filter(cell -> !counts.contains(cell.address()))
            .flatMap(cell -> ofCell(cell.address()).stream())
            .toList();
    boolean same =
        units.stream()
            .allMatch(
                unit ->
                    unit.measure().isLike(units.get(0).measure())
                        && unit.measure().over(units.get(0).measure()) == 1);
    return units.isEmpty() || !same ? Optional.empty() : Optional.of(units.get(0));
  }

  /** The way through one formula. */
  private final class Walk {

    private final Cell cell;

    Walk(Cell cell) {
      this.cell = cell;
    }

    Optional<Term> of(Expression expression) {
      if (expression instanceof Expression.Constant constant) {
        return Optional.of(Term.number(constant.value()));
      }
      if (expression instanceof Expression.CellReference reference) {
        return ofCell(reference.from(cell.address().sheet()));
      }
      if (expression instanceof Expression.RangeReference reference) {
        return common(reference.range(cell.address().sheet()));
      }
      if (expression instanceof Expression.Negative negative) {
        return of(negative.operand());
      }
      if (expression instanceof Expression.Chain chain) {
        return chained(chain);
      }
      if (expression instanceof Expression.Call call) {
        return called(call.function().name(), call.arguments());
      }
      return expression instanceof Expression.ForeignCall call
          ? called(call.name(), call.arguments())
          : Optional.empty();
    }

    private Optional<Term> chained(Expression.Chain chain) {
      Optional<Term> term = of(chain.first());
      for (Expression.Link link : chain.rest()) {
        Optional<Term> right = of(link.operand());
        Optional<Term> left = term;
        term = left.flatMap(one -> right.flatMap(other -> applied(link.operator(), one, other)));
      }
      return term;
    }

    private Optional<Term> applied(Binary operator, Term one, Term other) {
      return switch (operator) {
        case ADD -> sum(one, other, 1);
        case SUBTRACT -> sum(one, other, -1);
        case MULTIPLY -> Optional.of(one.times(other));
        case DIVIDE -> Optional.of(one.times(other.power(-1)));
        case POWER -> other.literal() ? Optional.of(one.power(other.value())) : Optional.empty();
        default -> Optional.empty();
      };
    }

    private Optional<Term> sum(Term one, Term other, int sign) {
      if (one.literal() && other.literal()) {
        return Optional.of(Term.number(one.value() + sign * other.value()));
      }
      if (one.literal() || other.literal()) {
        return Optional.of(one.literal() ? other : one);
      }
      if (one.measure().isLike(other.measure())) {
        if (one.measure().over(other.measure()) == 1) {
          return Optional.of(one.numbers().size() < other.numbers().size() ? other : one);
        }
        if (one.fits(other.measure())) {
          return Optional.of(other);
        }
        if (other.fits(one.measure())) {
          return Optional.of(one);
        }
      }
      fault(
          cell,
          one.mayHideUnit() || other.mayHideUnit(),
          Message.of("unit-unlike-formula.sum", shown(cell), one.shown(), other.shown()),
          Message.of("unit-unlike-formula.sum.expected"));
      return Optional.empty();
    }

    private Optional<Term> called(String function, List<Expression> arguments) {
      if (SAME_UNIT.contains(function)) {
        return alike(arguments);
      }
      if (PURE.contains(function)) {
        return Optional.of(Term.PURE);
      }
      if (function.equals("PI")) {
        return Optional.of(Term.number(Math.PI));
      }
      if (arguments.isEmpty()) {
        return Optional.empty();
      }
      FunctionRole role = NativeFunctions.role(function).orElse(FunctionRole.OTHER);
      if (OF_FIRST.contains(function) || role == FunctionRole.ROUNDED) {
        return of(arguments.get(0));
      }
      if (OF_ANGLE.contains(function)) {
        return angle(function, arguments.get(0));
      }
      return switch (function) {
        case "SQRT" -> root(arguments.get(0));
        case "RADIANS" -> Optional.of(Term.PURE);
        case "DEGREES" -> term("°");
        case "POWER" -> both(arguments, (one, other) -> applied(Binary.POWER, one, other));
        case "SUMSQ" -> alike(arguments).map(term -> term.power(2));
        case "VAR", "VARP", "DEVSQ" -> alike(arguments).map(term -> term.power(2));
        case "SUMPRODUCT" -> both(arguments, (one, other) -> Optional.of(one.times(other)));
        case "SLOPE" -> both(arguments, (y, x) -> Optional.of(y.times(x.power(-1))));
        case "INTERCEPT", "STEYX" -> of(arguments.get(0));
        case "INDEX" -> ofLine(arguments);
        case "IF" -> arguments.size() == 3 ? alike(arguments.subList(1, 3)) : Optional.empty();
        default -> ofLine(role, arguments);
      };
    }

    /** A number of a line through points, whose x come first. */
    private Optional<Term> ofLine(FunctionRole role, List<Expression> arguments) {
      return switch (role) {
        case SLOPE, SLOPE_UNCERTAINTY ->
            both(arguments, (x, y) -> Optional.of(y.times(x.power(-1))));
        case INTERCEPT, INTERCEPT_UNCERTAINTY ->
            arguments.size() > 1 ? of(arguments.get(1)) : Optional.empty();
        default -> Optional.empty();
      };
    }

    /** The root of a count is its scatter, in whatever unit that is told. */
    private Optional<Term> root(Expression argument) {
      return of(argument).filter(term -> !term.equals(Term.PURE)).map(term -> term.power(0.5));
    }

    private Optional<Term> both(
        List<Expression> arguments, BiFunction<Term, Term, Optional<Term>> of) {
      if (arguments.size() < 2) {
        return Optional.empty();
      }
      Optional<Term> one = of(arguments.get(0));
      Optional<Term> other = of(arguments.get(1));
      return one.flatMap(first -> other.flatMap(second -> of.apply(first, second)));
    }

    /** Arguments that are added or compared; unknown ones say nothing, as in a range. */
    private Optional<Term> alike(List<Expression> arguments) {
      Optional<Term> all = Optional.empty();
      for (Expression argument : arguments) {
        Optional<Term> term = of(argument);
        Optional<Term> before = all;
        if (before.isPresent() && term.isPresent()) {
          all = sum(before.get(), term.get(), 1);
          if (all.isEmpty()) {
            return Optional.empty();
          }
        } else {
          all = before.or(() -> term);
        }
      }
      return all;
    }

    /** Sine, cosine and tangent take radians. */
    private Optional<Term> angle(String function, Expression argument) {
      Optional<Term> angle = of(argument).filter(term -> !term.literal());
      angle
          .filter(term -> !term.measure().isLike(Measure.ONE) || !term.fits(Measure.ONE))
          .ifPresent(
              term ->
                  fault(
                      cell,
                      term.mayHideUnit(),
                      Message.of("unit-unlike-formula.angle", shown(cell), function, term.shown()),
                      Message.of("unit-unlike-formula.angle.expected", function)));
      return angle.isPresent() ? Optional.of(Term.PURE) : Optional.empty();
    }

    /** INDEX(LINEST(y; x; ...); row; column) of a straight line: slopes left, intercepts right. */
    private Optional<Term> ofLine(List<Expression> arguments) {
      List<Expression> points = lineOf(arguments.get(0));
      if (arguments.size() != 3 || points.size() < 2) {
        return Optional.empty();
      }
      Function<Expression, Optional<Double>> index =
          place -> of(place).filter(Term::literal).map(Term::value);
      boolean ofCoefficients = index.apply(arguments.get(1)).filter(row -> row <= 2).isPresent();
      Optional<Double> column = index.apply(arguments.get(2));
      if (!ofCoefficients || column.isEmpty()) {
        return Optional.empty();
      }
      return column.get() == 1
          ? both(points, (y, x) -> Optional.of(y.times(x.power(-1))))
          : of(points.get(0));
    }

    private List<Expression> lineOf(Expression expression) {
      if (expression instanceof Expression.ForeignCall call && call.name().equals("LINEST")) {
        return call.arguments();
      }
      return expression instanceof Expression.Call call && call.function().name().equals("LINEST")
          ? call.arguments()
          : List.of();
    }
  }
}
