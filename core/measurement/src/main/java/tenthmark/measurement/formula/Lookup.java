package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** A function that finds a place in a table, or what stands there. */
enum Lookup implements Function {
  /** What stands in a row and a column; a whole row or column where one of them is 0. */
  INDEX(new Arity(2, 3)) {
    @Override
    public boolean takesOne(int index) {
      return index > 0;
    }

    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      Operand.Block<T> block = evaluator.block(arguments.get(0));
      T first = evaluator.number(arguments.get(1));
      if (arguments.size() == 2 && block.height() == 1) {
        return evaluator.at(first, block.width(), column -> block.at(0, column));
      }
      T second =
          arguments.size() == 2
              ? evaluator.field().constant(block.width() == 1 ? 1 : 0)
              : evaluator.number(arguments.get(2));
      boolean allRows = isZero(evaluator, first);
      boolean allColumns = isZero(evaluator, second);
      if (allRows && allColumns) {
        return block;
      }
      if (allRows) {
        return evaluator.at(second, block.width(), column -> block.column(column));
      }
      return evaluator.at(
          first,
          block.height(),
          row ->
              allColumns
                  ? block.row(row)
                  : evaluator.at(second, block.width(), column -> block.at(row, column)));
    }
  },
  /** At which place of a row or column a value stands. */
  MATCH(new Arity(2, 3)) {
    @Override
    public boolean takesOne(int index) {
      return index != 1;
    }

    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      int way = arguments.size() < 3 ? 1 : evaluator.wholeNumber(arguments.get(2));
      List<Operand<T>> line = line(evaluator, arguments.get(1));
      return found(
          evaluator,
          evaluator.operand(arguments.get(0)),
          line,
          Integer.signum(way),
          place -> new Operand.Number<>(evaluator.field().constant(place + 1.0)));
    }
  },
  /** What stands in a column beside the value that is found in the first one. */
  VLOOKUP(new Arity(3, 4)) {
    @Override
    public boolean takesOne(int index) {
      return index != 1;
    }

    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      Operand.Block<T> table = evaluator.block(arguments.get(1));
      int column = within(evaluator.wholeNumber(arguments.get(2)), table.width());
      return found(
          evaluator,
          evaluator.operand(arguments.get(0)),
          IntStream.range(0, table.rows().size()).mapToObj(row -> table.at(row, 0)).toList(),
          isSorted(evaluator, arguments) ? 1 : 0,
          row -> table.at(row, column));
    }
  },
  /** The same by rows. */
  HLOOKUP(new Arity(3, 4)) {
    @Override
    public boolean takesOne(int index) {
      return index != 1;
    }

    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      Operand.Block<T> table = evaluator.block(arguments.get(1));
      int row = within(evaluator.wholeNumber(arguments.get(2)), table.height());
      return found(
          evaluator,
          evaluator.operand(arguments.get(0)),
          IntStream.range(0, table.usedWidth()).mapToObj(column -> table.at(0, column)).toList(),
          isSorted(evaluator, arguments) ? 1 : 0,
          column -> table.at(row, column));
    }
  },
  /** What stands in another row or column at the place of a value in a sorted one. */
  LOOKUP(new Arity(2, 3)) {
    @Override
    public boolean takesOne(int index) {
      return index == 0;
    }

    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      List<Operand<T>> line = line(evaluator, arguments.get(1));
      List<Operand<T>> results = arguments.size() == 2 ? line : line(evaluator, arguments.get(2));
      return found(
          evaluator,
          evaluator.operand(arguments.get(0)),
          line,
          1,
          place -> place < results.size() ? results.get(place) : new Operand.Blank<>());
    }
  };

  private final Arity arity;

  Lookup(Arity arity) {
    this.arity = arity;
  }

  @Override
  public Arity arity() {
    return arity;
  }

  private static <T> boolean isZero(Evaluator<T> evaluator, T number) {
    return evaluator.field().fixed(number).orElse(1) == 0;
  }

  private static int within(int position, int count) {
    if (position < 1 || position > count) {
      throw FormulaException.ofError("formula.index", position, count);
    }
    return position - 1;
  }

  private static <T> boolean isSorted(Evaluator<T> evaluator, List<Expression> arguments) {
    return arguments.size() < 4 || evaluator.wholeNumber(arguments.get(3)) != 0;
  }

  static <T> List<Operand<T>> line(Evaluator<T> evaluator, Expression argument) {
    Operand.Block<T> block = evaluator.block(argument);
    if (block.height() != 1 && block.width() != 1) {
      throw FormulaException.of("formula.line");
    }
    return block.cells(block.rows().size(), block.usedWidth());
  }

  /**
   * The result at the place where a value is found.
   *
   * @param way 0 for the first one that equals it; 1 for the last one in rising order that is not
   *     greater; -1 for the last one in falling order that is not smaller
   */
  <T> Operand<T> found(
      Evaluator<T> evaluator,
      Operand<T> wanted,
      List<Operand<T>> line,
      int way,
      IntFunction<Operand<T>> result) {
    if (way == 0) {
      return firstThat(evaluator, Binary.EQUAL, wanted, line, false, result);
    }
    requireOrder(evaluator, wanted, line, way);
    Binary condition = way > 0 ? Binary.GREATER_OR_EQUAL : Binary.LESS_OR_EQUAL;
    return firstThat(evaluator, condition, wanted, line, true, result);
  }

  private <T> Operand<T> firstThat(
      Evaluator<T> evaluator,
      Binary condition,
      Operand<T> wanted,
      List<Operand<T>> line,
      boolean backwards,
      IntFunction<Operand<T>> result) {
    List<Supplier<T>> conditions = new ArrayList<>();
    List<Supplier<Operand<T>>> values = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      int place = backwards ? line.size() - 1 - i : i;
      Operand<T> cell = line.get(place);
      if (Criterion.isOfOneKind(wanted, cell)) {
        conditions.add(() -> Criterion.compared(evaluator, condition, wanted, cell));
        values.add(() -> result.apply(place));
      }
    }
    return evaluator.firstWhere(
        conditions,
        values,
        () -> {
          throw FormulaException.notAvailable("formula.not.found", name());
        });
  }

  /** Among numbers out of order Calc finds what its way of searching comes upon. */
  private <T> void requireOrder(
      Evaluator<T> evaluator, Operand<T> wanted, List<Operand<T>> line, int way) {
    if (!(wanted instanceof Operand.Number)) {
      throw FormulaException.of("formula.sorted.texts", name());
    }
    double before = Double.NaN;
    for (Operand<T> cell : line) {
      if (cell instanceof Operand.Number<T> number) {
        double value = evaluator.field().fixed(number.value()).orElse(Double.NaN);
        if (way * value < way * before) {
          throw FormulaException.of("formula.unsorted", name());
        }
        before = value;
      }
    }
  }
}
