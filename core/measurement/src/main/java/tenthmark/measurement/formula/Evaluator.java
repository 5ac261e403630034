package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import tenthmark.measurement.formula.Expression.Call;
import tenthmark.measurement.formula.Expression.Chain;
import tenthmark.measurement.formula.Expression.Compared;
import tenthmark.measurement.formula.Expression.Constant;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Joined;
import tenthmark.measurement.formula.Expression.Link;
import tenthmark.measurement.formula.Expression.Negative;
import tenthmark.measurement.formula.Expression.Reference;
import tenthmark.measurement.formula.Expression.Union;

/**
 * Computes a formula over any field.
 *
 * @param <T> the numbers of the field
 */
public final class Evaluator<T> {

  /** How often samples may differ in one search through a table. */
  private static final int MOST_UNDECIDED = 500;

  private final Field<T> field;
  private final Scope<T> scope;
  private final ArrayPlace<T> place;

  /** An evaluator for the formulas of one scope. */
  public Evaluator(Field<T> field, Scope<T> scope) {
    this(field, scope, null);
  }

  /**
   * The same for an array formula.
   *
   * @param place the cell of the array that is computed; null outside array formulas
   */
  private Evaluator(Field<T> field, Scope<T> scope, ArrayPlace<T> place) {
    this.field = field;
    this.scope = scope;
    this.place = place;
  }

  Field<T> field() {
    return field;
  }

  /** The evaluator for one cell of an array formula, counted from 0. */
  Evaluator<T> inArray(int row, int column) {
    return new Evaluator<>(
        field, scope, place == null ? ArrayPlace.first(row, column) : place.at(row, column));
  }

  /** The single number that an expression amounts to. */
  T number(Expression expression) {
    if (expression instanceof Chain chain) {
      T value = number(chain.first());
      for (Link link : chain.rest()) {
        value = field.apply(link.operator(), value, number(link.operand()));
      }
      return value;
    }
    if (expression instanceof Constant constant) {
      return field.constant(constant.value());
    }
    if (expression instanceof Negative negative) {
      return negated(number(negative.operand()));
    }
    return numberIn(operand(expression));
  }

  /**
   * What an expression amounts to, whatever it is; in an array formula, at the cell computed.
   *
   * @throws FormulaException if it is not defined
   */
  public Operand<T> operand(Expression expression) {
    return place != null && isWhole(expression)
        ? place.cell(place.whole(expression, () -> outright(expression)))
        : outright(expression);
  }

  /** Whether an expression is computed once for all cells of an array. */
  private static boolean isWhole(Expression expression) {
    if (expression instanceof Call call) {
      return IntStream.range(0, call.arguments().size()).noneMatch(call.function()::takesOne);
    }
    return expression instanceof Reference
        || expression instanceof ForeignCall
        || expression instanceof Expression.Array;
  }

  private Operand<T> outright(Expression expression) {
    if (expression instanceof Reference reference) {
      return scope.at(reference);
    }
    if (expression instanceof Call call) {
      return call.function().call(this, call.arguments());
    }
    if (expression instanceof Expression.Text text) {
      return new Operand.Text<>(text.text());
    }
    if (expression instanceof Expression.Omitted) {
      return new Operand.Blank<>();
    }
    if (expression instanceof Expression.Array array) {
      return written(array);
    }
    if (expression instanceof Compared compared) {
      return new Operand.Number<>(
          compared(compared.operator(), operand(compared.left()), operand(compared.right())));
    }
    if (expression instanceof ForeignCall call) {
      return scope.called(call);
    }
    if (expression instanceof Joined joined) {
      return scope.joined(operand(joined.left()), operand(joined.right()));
    }
    if (expression instanceof Union) {
      throw FormulaException.of("formula.union");
    }
    return new Operand.Number<>(number(expression));
  }

  private Operand<T> written(Expression.Array array) {
    return new Operand.Block<>(
        array.rows().size(),
        array.rows().get(0).size(),
        array.rows().stream().map(row -> row.stream().map(this::outright).toList()).toList());
  }

  /** The number of an operand that must be single; a blank cell is 0. */
  T numberIn(Operand<T> operand) {
    if (operand instanceof Operand.Number<T> number) {
      return number.value();
    }
    if (operand instanceof Operand.Blank) {
      return field.constant(0);
    }
    if (operand instanceof Operand.Fault<T> fault) {
      throw fault.problem();
    }
    if (operand instanceof Operand.Text<T> text) {
      throw notANumber(text.text());
    }
    throw FormulaException.of("formula.range");
  }

  /** A text with digits may count as a number, which depends on the document. */
  private static FormulaException notANumber(String text) {
    boolean digits = text.chars().anyMatch(Character::isDigit);
    return digits
        ? FormulaException.of("formula.text", text)
        : FormulaException.ofError("formula.text", text);
  }

  /** A whole number that an expression amounts to, whatever the inputs are. */
  int wholeNumber(Expression expression) {
    double number =
        field.fixed(number(expression)).orElseThrow(() -> FormulaException.of("formula.position"));
    return (int) CalcArithmetic.floor(number);
  }

  /**
   * All numbers in the arguments of a function such as SUM: text and blank cells are left out of
   * references, and a text written in the formula is refused.
   */
  List<T> numbers(List<Expression> arguments) {
    List<T> numbers = new ArrayList<>();
    for (Expression argument : arguments) {
      if (argument instanceof Union union) {
        numbers.addAll(numbers(union.parts()));
        continue;
      }
      Operand<T> operand = whole(argument);
      if (operand instanceof Operand.Block<T> block) {
        block.rows().forEach(row -> row.forEach(cell -> addNumber(cell, numbers)));
      } else if (argument instanceof Reference) {
        addNumber(operand, numbers);
      } else {
        numbers.add(numberIn(operand));
      }
    }
    return numbers;
  }

  private void addNumber(Operand<T> cell, List<T> numbers) {
    if (isNumber(cell)) {
      numbers.add(numberIn(cell));
    }
  }

  /** Whether a cell holds a number; one in error stops the calculation. */
  boolean isNumber(Operand<T> cell) {
    if (cell instanceof Operand.Fault<T> fault) {
      throw fault.problem();
    }
    return cell instanceof Operand.Number;
  }

  /** An argument of a function that takes ranges; in an array formula with all its cells. */
  Operand<T> whole(Expression expression) {
    return place == null ? operand(expression) : array(expression);
  }

  /** The rectangle of an argument of a function that takes ranges. */
  Operand.Block<T> block(Expression expression) {
    return blockOf(whole(expression));
  }

  /** The same of an argument that may be an error as a whole. */
  Operand.Block<T> blockOrFault(Expression expression) {
    try {
      return block(expression);
    } catch (FormulaException problem) {
      return blockOf(new Operand.Fault<>(problem));
    }
  }

  private static <T> Operand.Block<T> blockOf(Operand<T> operand) {
    return operand instanceof Operand.Block<T> block
        ? block
        : new Operand.Block<>(1, 1, List.of(List.of(operand)));
  }

  /** All cells of an expression that is computed cell by cell, as inside SUMPRODUCT. */
  private Operand<T> array(Expression expression) {
    Evaluator<T> first = inArray(0, 0);
    if (isWhole(expression)) {
      return first.place.whole(expression, () -> first.outright(expression));
    }
    ArrayShape shape = first.shape(expression);
    if (shape.isSingle()) {
      return first.operand(expression);
    }
    List<List<Operand<T>>> rows = new ArrayList<>();
    for (int row = 0; row < shape.usedHeight(); row++) {
      List<Operand<T>> cells = new ArrayList<>();
      for (int column = 0; column < shape.usedWidth(); column++) {
        cells.add(first.inArray(row, column).held(expression));
      }
      rows.add(cells);
    }
    return new Operand.Block<>(shape.height(), shape.width(), rows);
  }

  /** An error in one cell of an array does no harm to the others. */
  private Operand<T> held(Expression expression) {
    try {
      return operand(expression);
    } catch (FormulaException problem) {
      return new Operand.Fault<>(problem);
    }
  }

  private ArrayShape shape(Expression expression) {
    if (isWhole(expression)) {
      Operand<T> whole = place.whole(expression, () -> outright(expression));
      return whole instanceof Operand.Block<T> block ? ArrayShape.of(block) : ArrayShape.SINGLE;
    }
    ArrayShape shape = ArrayShape.SINGLE;
    for (int i = 0; i < expression.parts().size(); i++) {
      if (!(expression instanceof Call call) || call.function().takesOne(i)) {
        shape = shape.with(shape(expression.parts().get(i)));
      }
    }
    return shape;
  }

  /** The cells of each argument in the same order; ranges of different size are refused. */
  List<List<Operand<T>>> aligned(String function, List<Expression> arguments) {
    Evaluator<T> inArray = inArray(0, 0);
    List<Operand.Block<T>> blocks = arguments.stream().map(inArray::block).toList();
    Operand.Block<T> shape = blocks.get(0);
    if (blocks.stream().anyMatch(b -> b.height() != shape.height() || b.width() != shape.width())) {
      throw FormulaException.of("formula.one.size", function);
    }
    int height = blocks.stream().mapToInt(block -> block.rows().size()).max().orElse(0);
    int width = blocks.stream().mapToInt(Operand.Block::usedWidth).max().orElse(0);
    return blocks.stream().map(block -> block.cells(height, width)).toList();
  }

  /**
   * The value at a position, its decimals cut off.
   *
   * @param position counted from 1
   * @param value gives that at an index counted from 0
   */
  Operand<T> at(T position, int count, IntFunction<Operand<T>> value) {
    OptionalDouble fixed = field.fixed(position);
    if (fixed.isPresent()) {
      double index = CalcArithmetic.floor(fixed.getAsDouble());
      if (!(index >= 1 && index <= count)) {
        throw FormulaException.ofError("formula.index", Trouble.shown(index), count);
      }
      return value.apply((int) index - 1);
    }
    T whole = field.apply(Unary.INT, position);
    List<Supplier<T>> conditions = new ArrayList<>();
    List<Supplier<Operand<T>>> values = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int index = i;
      conditions.add(() -> field.apply(Binary.EQUAL, whole, field.constant(index + 1.0)));
      values.add(() -> value.apply(index));
    }
    return firstWhere(conditions, values, () -> new Operand.Number<>(field.constant(Double.NaN)));
  }

  /**
   * The first of some values whose condition holds.
   *
   * @param otherwise if none does
   */
  Operand<T> firstWhere(
      List<Supplier<T>> conditions,
      List<Supplier<Operand<T>>> values,
      Supplier<Operand<T>> otherwise) {
    return firstWhere(conditions, values, otherwise, 0, 0);
  }

  private Operand<T> firstWhere(
      List<Supplier<T>> conditions,
      List<Supplier<Operand<T>>> values,
      Supplier<Operand<T>> otherwise,
      int from,
      int undecided) {
    for (int i = from; i < conditions.size(); i++) {
      T condition = conditions.get(i).get();
      if (field.fixed(condition).isEmpty()) {
        return undecided(condition, conditions, values, otherwise, i, undecided + 1);
      }
      if (field.fixed(condition).getAsDouble() != 0) {
        return values.get(i).get();
      }
    }
    return otherwise.get();
  }

  /** Where samples differ, each has its own answer. */
  private Operand<T> undecided(
      T condition,
      List<Supplier<T>> conditions,
      List<Supplier<Operand<T>>> values,
      Supplier<Operand<T>> otherwise,
      int index,
      int undecided) {
    if (undecided > MOST_UNDECIDED) {
      throw FormulaException.of("formula.undecided", MOST_UNDECIDED);
    }
    return field.choose(
        condition,
        values.get(index),
        () -> firstWhere(conditions, values, otherwise, index + 1, undecided));
  }

  private T negated(T value) {
    return field.apply(Binary.MULTIPLY, field.constant(-1), value);
  }

  T compared(Binary operator, Operand<T> left, Operand<T> right) {
    boolean texts = left instanceof Operand.Text || right instanceof Operand.Text;
    return texts
        ? field.constant(operator.value(Math.signum(textOrder(left, right)), 0))
        : field.apply(operator, numberIn(left), numberIn(right));
  }

  /** A number comes before any text, and a blank cell is an empty text here. */
  private int textOrder(Operand<T> left, Operand<T> right) {
    if (isNumber(left)) {
      return -1;
    }
    if (isNumber(right)) {
      return 1;
    }
    String first = left instanceof Operand.Text<T> text ? text.text() : "";
    String second = right instanceof Operand.Text<T> text ? text.text() : "";
    if (!first.equals(second) && first.equalsIgnoreCase(second)) {
      throw FormulaException.of("formula.capitals", first, second);
    }
    return first.compareToIgnoreCase(second);
  }
}
