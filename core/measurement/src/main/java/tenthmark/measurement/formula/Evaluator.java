package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;
import tenthmark.measurement.formula.Expression.Call;
import tenthmark.measurement.formula.Expression.Chain;
import tenthmark.measurement.formula.Expression.Compared;
import tenthmark.measurement.formula.Expression.Constant;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Joined;
import tenthmark.measurement.formula.Expression.Link;
import tenthmark.measurement.formula.Expression.Negative;
import tenthmark.measurement.formula.Expression.Reference;

/**
 * Computes a formula over any field.
 *
 * @param <T> the numbers of the field
 */
public final class Evaluator<T> {

  private final Field<T> field;
  private final Scope<T> scope;

  /** An evaluator for the formulas of one scope. */
  public Evaluator(Field<T> field, Scope<T> scope) {
    this.field = field;
    this.scope = scope;
  }

  Field<T> field() {
    return field;
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
   * What an expression amounts to, whatever it is.
   *
   * @throws FormulaException if it is not defined
   */
  public Operand<T> operand(Expression expression) {
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
    return new Operand.Number<>(number(expression));
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
      throw FormulaException.of("formula.text", text.text());
    }
    throw FormulaException.of("formula.range");
  }

  /**
   * All numbers in the arguments of a function such as SUM: text and blank cells are left out of
   * references, and a text written in the formula is refused.
   */
  List<T> numbers(List<Expression> arguments) {
    List<T> numbers = new ArrayList<>();
    for (Expression argument : arguments) {
      Operand<T> operand = operand(argument);
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

  /** The rectangle of an expression that is computed cell by cell, as inside SUMPRODUCT. */
  Operand.Block<T> block(Expression expression) {
    if (expression instanceof Chain chain) {
      Operand.Block<T> value = block(chain.first());
      for (Link link : chain.rest()) {
        value = paired(value, block(link.operand()), numberwise(link.operator()));
      }
      return value;
    }
    if (expression instanceof Negative negative) {
      return paired(
          scalar(new Operand.Number<>(field.constant(-1))),
          block(negative.operand()),
          numberwise(Binary.MULTIPLY));
    }
    if (expression instanceof Compared compared) {
      return paired(
          block(compared.left()),
          block(compared.right()),
          (x, y) -> new Operand.Number<>(compared(compared.operator(), x, y)));
    }
    if (expression instanceof Call call && call.function() instanceof Elementwise function) {
      return function.callOnBlocks(this, call.arguments());
    }
    Operand<T> operand = operand(expression);
    return operand instanceof Operand.Block<T> block ? block : scalar(operand);
  }

  /** The cells of each argument in the same order; ranges of different size are refused. */
  List<List<Operand<T>>> aligned(String function, List<Expression> arguments) {
    List<Operand.Block<T>> blocks = arguments.stream().map(this::block).toList();
    Operand.Block<T> shape = blocks.get(0);
    if (blocks.stream().anyMatch(b -> b.height() != shape.height() || b.width() != shape.width())) {
      throw FormulaException.of("formula.one.size", function);
    }
    int height = blocks.stream().mapToInt(block -> block.rows().size()).max().orElse(0);
    int width = blocks.stream().mapToInt(Operand.Block::usedWidth).max().orElse(0);
    return blocks.stream().map(block -> block.cells(height, width)).toList();
  }

  private BinaryOperator<Operand<T>> numberwise(Binary function) {
    return (x, y) -> new Operand.Number<>(field.apply(function, numberIn(x), numberIn(y)));
  }

  private Operand.Block<T> scalar(Operand<T> operand) {
    return new Operand.Block<>(1, 1, List.of(List.of(operand)));
  }

  /** Pairs two rectangles; one row, one column or one cell goes with each of the other's. */
  Operand.Block<T> paired(
      Operand.Block<T> left, Operand.Block<T> right, BinaryOperator<Operand<T>> function) {
    int height = common(left.height(), right.height());
    int width = common(left.width(), right.width());
    int usedHeight = Math.min(height, Math.max(left.rows().size(), right.rows().size()));
    int usedWidth = Math.min(width, Math.max(left.usedWidth(), right.usedWidth()));
    List<List<Operand<T>>> rows = new ArrayList<>();
    for (int row = 0; row < usedHeight; row++) {
      List<Operand<T>> cells = new ArrayList<>();
      for (int column = 0; column < usedWidth; column++) {
        cells.add(function.apply(spread(left, row, column), spread(right, row, column)));
      }
      rows.add(cells);
    }
    return new Operand.Block<>(height, width, rows);
  }

  private Operand<T> spread(Operand.Block<T> block, int row, int column) {
    return block.at(block.height() == 1 ? 0 : row, block.width() == 1 ? 0 : column);
  }

  private static int common(int left, int right) {
    if (left != right && left != 1 && right != 1) {
      throw FormulaException.of("formula.two.sizes");
    }
    return Math.max(left, right);
  }

  private T negated(T value) {
    return field.apply(Binary.MULTIPLY, field.constant(-1), value);
  }

  private T compared(Binary operator, Operand<T> left, Operand<T> right) {
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
