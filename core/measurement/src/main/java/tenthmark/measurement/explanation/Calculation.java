package tenthmark.measurement.explanation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorkbookConvention;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Doubles;
import tenthmark.measurement.formula.Evaluator;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Reference;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Names;
import tenthmark.measurement.formula.Operand;
import tenthmark.measurement.formula.Scope;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Sentences;

/**
 * Computes parts of a formula, LAB functions among them, from what the document shows in the cells
 * that it refers to.
 */
final class Calculation implements Scope<Double> {

  private final Catalogue catalogue;
  private final Cells cells;
  private final CellAddress cell;
  private final Names names;
  private final Sentences sentences;
  private final Evaluator<Double> evaluator = new Evaluator<>(new Doubles(), this);

  /**
   * Computes the formula of a cell.
   *
   * @param cell to whose sheet references without sheet point, and from which names are seen
   */
  Calculation(
      Catalogue catalogue, Formulas formulas, Cells cells, CellAddress cell, Sentences sentences) {
    this.catalogue = catalogue;
    this.cells = cells;
    this.cell = cell;
    this.names = new Names(cells, formulas);
    this.sentences = sentences;
  }

  /**
   * What an expression amounts to.
   *
   * @throws FormulaException if it is not defined
   * @throws tenthmark.measurement.catalogue.ArgumentException if a LAB function refuses an argument
   * @throws NotComputableException if only the document's own program can tell
   */
  Operand<Double> value(Expression expression) {
    return evaluator.operand(expression);
  }

  /**
   * The LAB function that is called; none for one that explains cells, which might go in rounds.
   */
  Optional<WorksheetFunction> function(ForeignCall call) {
    boolean ofCells = call.arguments().stream().anyMatch(Reference.class::isInstance);
    return catalogue
        .find(call.name())
        .filter(function -> !ofCells || function.declaration().family() != Family.EXPLAINING);
  }

  /** The parameter to which an argument belongs; none for a function without parameters. */
  static Optional<Parameter<?>> parameter(WorksheetFunction function, int index) {
    List<Parameter<?>> parameters = function.declaration().parameters();
    return parameters.isEmpty()
        ? Optional.empty()
        : Optional.of(parameters.get(Math.min(index, parameters.size() - 1)));
  }

  /** The single cells whose formulas a function follows. */
  List<CellAddress> followed(ForeignCall call) {
    return function(call)
        .map(
            function ->
                IntStream.range(0, call.arguments().size())
                    .filter(index -> takesCells(function, index))
                    .mapToObj(call.arguments()::get)
                    .flatMap(argument -> singleCell(argument).stream())
                    .toList())
        .orElse(List.of());
  }

  private Optional<CellAddress> singleCell(Expression argument) {
    try {
      return meaning(argument) instanceof CellReference reference
          ? Optional.of(reference.from(cell.sheet()))
          : Optional.empty();
    } catch (FormulaException unknownName) {
      return Optional.empty();
    }
  }

  /**
   * An expression with what its names stand for.
   *
   * @throws FormulaException if one stands for nothing that can be read
   */
  Expression meaning(Expression expression) {
    return names.replaced(expression, cell);
  }

  /** The document's convention. */
  Convention convention() {
    return WorkbookConvention.in(cells);
  }

  /** Whether a function takes the cells of an argument themselves. */
  static boolean takesCells(WorksheetFunction function, int index) {
    return parameter(function, index)
        .filter(parameter -> parameter.form() == Kind.Form.REFERENCE)
        .isPresent();
  }

  /** The arguments as Calc hands them over. */
  List<Value> arguments(WorksheetFunction function, ForeignCall call) {
    List<Value> values = new ArrayList<>();
    for (int i = 0; i < call.arguments().size(); i++) {
      Expression argument = call.arguments().get(i);
      values.add(
          takesCells(function, i) && meaning(argument) instanceof Reference reference
              ? new Value.Reference(new CellBlock(rangeOf(reference), cells))
              : argument(argument));
    }
    return values;
  }

  /** A blank cell that stands alone is zero, as Calc hands it over. */
  private Value argument(Expression expression) {
    Operand<Double> operand = value(expression);
    return operand instanceof Operand.Blank && expression instanceof Reference
        ? Value.of(0)
        : valueOf(operand);
  }

  private static Value valueOf(Operand<Double> operand) {
    if (operand instanceof Operand.Number<Double> number) {
      return Value.of(number.value());
    }
    if (operand instanceof Operand.Text<Double> text) {
      return Value.of(text.text());
    }
    if (operand instanceof Operand.Fault<Double> fault) {
      throw fault.problem();
    }
    return operand instanceof Operand.Block<Double> block ? table(block) : Value.BLANK;
  }

  private static Value table(Operand.Block<Double> block) {
    List<List<Value>> rows = new ArrayList<>();
    for (int row = 0; row < Math.max(1, block.rows().size()); row++) {
      List<Value> cells = new ArrayList<>();
      for (int column = 0; column < block.width(); column++) {
        cells.add(valueOf(block.at(row, column)));
      }
      rows.add(cells);
    }
    return new Value.Table(rows);
  }

  /**
   * The cells that a reference stands for.
   *
   * @throws FormulaException if a name stands for none
   */
  CellRange rangeOf(Reference reference) {
    return meaning(reference) instanceof Reference meant
        ? meant.range(cell.sheet())
        : reference.range(cell.sheet());
  }

  /** What was typed into the cells of a range; formulas stay formulas. */
  List<List<CellContent>> contents(CellRange range) {
    return cells.rows(range);
  }

  /** What a cell shows: never a formula. */
  CellContent shown(CellAddress cell, CellContent content) {
    return content instanceof CellContent.Formula
        ? cells.shown(cell).orElseThrow(() -> new NotComputableException(cell.place()))
        : content;
  }

  @Override
  public Operand<Double> at(Reference reference) {
    Expression meaning = meaning(reference);
    return meaning instanceof Reference cells ? at(cells.range(cell.sheet())) : value(meaning);
  }

  private Operand<Double> at(CellRange range) {
    if (range.width() == 1 && range.height() == 1) {
      return operand(range.first(), cells.at(range.first()));
    }
    List<List<CellContent>> contents = cells.rows(range);
    List<List<Operand<Double>>> rows = new ArrayList<>();
    for (int row = 0; row < contents.size(); row++) {
      List<Operand<Double>> operands = new ArrayList<>();
      for (int column = 0; column < contents.get(row).size(); column++) {
        CellAddress cell = new CellAddress(range.sheet(), range.left() + column, range.top() + row);
        operands.add(operand(cell, contents.get(row).get(column)));
      }
      rows.add(operands);
    }
    return new Operand.Block<>(range.height(), range.width(), rows);
  }

  private Operand<Double> operand(CellAddress cell, CellContent content) {
    CellContent shown = shown(cell, content);
    if (shown instanceof CellContent.Number number) {
      return new Operand.Number<>(number.value());
    }
    if (shown instanceof CellContent.Text text) {
      return new Operand.Text<>(text.text());
    }
    return shown instanceof CellContent.Fault fault
        ? new Operand.Fault<>(FormulaException.of("formula.shows", cell.place(), fault.name()))
        : new Operand.Blank<>();
  }

  @Override
  public Operand<Double> called(ForeignCall call) {
    WorksheetFunction function =
        function(call).orElseThrow(() -> new NotComputableException(call.name()));
    return operand(function.compute(arguments(function, call), sentences, this::convention));
  }

  private static Operand<Double> operand(Value value) {
    if (value instanceof Value.Numeric numeric) {
      return new Operand.Number<>(numeric.number());
    }
    if (value instanceof Value.Text text) {
      return new Operand.Text<>(text.text());
    }
    if (value instanceof Value.Table table) {
      return new Operand.Block<>(
          table.height(),
          table.width(),
          table.rows().stream()
              .map(row -> row.stream().map(Calculation::operand).toList())
              .toList());
    }
    return new Operand.Blank<>();
  }

  /** How a number in a joined text looks depends on the document, so it is left to it. */
  @Override
  public Operand<Double> joined(Operand<Double> left, Operand<Double> right) {
    return new Operand.Text<>(text(left) + text(right));
  }

  private static String text(Operand<Double> operand) {
    if (operand instanceof Operand.Text<Double> text) {
      return text.text();
    }
    if (operand instanceof Operand.Blank) {
      return "";
    }
    throw new NotComputableException("&");
  }
}
