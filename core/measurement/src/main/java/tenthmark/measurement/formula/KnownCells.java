package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.Reference;
import tenthmark.measurement.wording.ErrorName;

/**
 * What following a formula has found out about the cells behind it: what those hold that no input
 * changes, and how far each range is filled.
 */
final class KnownCells {

  private final String sheet;
  private final Map<CellAddress, Operand<Double>> constants = new HashMap<>();
  private final Map<CellRange, Filled> ranges = new HashMap<>();

  /** The part of a range that holds anything. */
  private record Filled(int height, int width) {}

  /**
   * A cell whose formula is computed.
   *
   * @param first the first cell that an array formula fills; the same one for any other formula
   */
  record Step(CellAddress cell, Formula formula, CellAddress first) {

    <T> Operand<T> value(Evaluator<T> evaluator) {
      return formula.isArray()
          ? evaluator
              .inArray(cell.row() - first.row(), cell.column() - first.column())
              .operand(formula.tree())
          : evaluator.operand(formula.tree());
    }
  }

  /**
   * Knows nothing yet.
   *
   * @param sheet the sheet that need not be named in sentences
   */
  KnownCells(String sheet) {
    this.sheet = sheet;
  }

  /** Operations of a formula and cells that it refers to. */
  long size(Step step) {
    return size(step.formula().tree(), step.cell().sheet());
  }

  private long size(Expression expression, String own) {
    if (expression instanceof Reference reference) {
      Filled filled = ranges.get(reference.range(own));
      return filled == null ? 1 : (long) filled.height() * filled.width();
    }
    return 1 + expression.parts().stream().mapToLong(part -> size(part, own)).sum();
  }

  boolean isConstant(CellAddress cell) {
    return constants.containsKey(cell);
  }

  void constant(CellAddress cell, Operand<Double> held) {
    constants.put(cell, held);
  }

  /** A cell as typed in. */
  void constant(CellAddress cell, CellContent content) {
    constants.put(cell, typedIn(content, cell));
  }

  void filled(CellRange range, int height, int width) {
    ranges.put(range, new Filled(height, width));
  }

  /** What a cell that no input changes holds, as a number of the field. */
  <T> Operand<T> constant(CellAddress cell, Field<T> field) {
    Operand<Double> held = constants.get(cell);
    if (held instanceof Operand.Number<Double> number) {
      return new Operand.Number<>(field.constant(number.value()));
    }
    if (held instanceof Operand.Text<Double> text) {
      return new Operand.Text<>(text.text());
    }
    if (held instanceof Operand.Fault<Double> fault) {
      return new Operand.Fault<>(fault.problem());
    }
    return new Operand.Blank<>();
  }

  /** The value of a formula, given what inputs change; a problem waits until it is needed. */
  <T> Operand<T> compute(Step step, Field<T> field, Map<CellAddress, Operand<T>> changing) {
    String own = step.cell().sheet();
    Evaluator<T> evaluator =
        new Evaluator<>(field, reference -> referred(reference, own, field, changing));
    try {
      Operand<T> value = step.value(evaluator);
      return value instanceof Operand.Number || value instanceof Operand.Text
          ? value
          : new Operand.Number<>(evaluator.numberIn(value));
    } catch (FormulaException problem) {
      return fault(problem, step.cell());
    }
  }

  /** A cell whose value is missing for a reason. */
  <T> Operand<T> fault(FormulaException problem, CellAddress cell) {
    return new Operand.Fault<>(problem.in(label(cell)));
  }

  /** A cell as a sentence names it. */
  String label(CellAddress cell) {
    return cell.sheet().equals(sheet) ? cell.place() : cell.toString();
  }

  private <T> Operand<T> referred(
      Reference reference, String own, Field<T> field, Map<CellAddress, Operand<T>> changing) {
    if (reference instanceof CellReference cell) {
      return held(cell.from(own), field, changing);
    }
    CellRange range = reference.range(own);
    boolean single = range.width() == 1 && range.height() == 1;
    return single ? held(range.first(), field, changing) : block(range, field, changing);
  }

  private <T> Operand<T> held(
      CellAddress cell, Field<T> field, Map<CellAddress, Operand<T>> changing) {
    Operand<T> value = changing.get(cell);
    return value != null ? value : constant(cell, field);
  }

  private <T> Operand<T> block(
      CellRange range, Field<T> field, Map<CellAddress, Operand<T>> changing) {
    Filled filled = ranges.get(range);
    List<List<Operand<T>>> rows = new ArrayList<>(filled.height());
    for (int row = 0; row < filled.height(); row++) {
      List<Operand<T>> cells = new ArrayList<>(filled.width());
      for (int column = 0; column < filled.width(); column++) {
        CellAddress cell = new CellAddress(range.sheet(), range.left() + column, range.top() + row);
        cells.add(held(cell, field, changing));
      }
      rows.add(cells);
    }
    return new Operand.Block<>(range.height(), range.width(), rows);
  }

  static FormulaException error(CellContent.Fault fault) {
    Object name = new ErrorName(fault.name()).shown();
    return fault.name().equals("#N/A")
        ? FormulaException.notAvailable("formula.error", name)
        : FormulaException.ofError("formula.error", name);
  }

  private Operand<Double> typedIn(CellContent content, CellAddress cell) {
    if (content instanceof CellContent.Number number) {
      return new Operand.Number<>(number.value());
    }
    if (content instanceof CellContent.Text text) {
      return new Operand.Text<>(text.text());
    }
    if (content instanceof CellContent.Fault fault) {
      return fault(error(fault), cell);
    }
    return new Operand.Blank<>();
  }
}
