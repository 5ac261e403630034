package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads models and numbers out of a document's cells. */
public final class Follower {

  private final Formulas formulas;

  /** A follower that reads formulas with the given reader, which keeps them for the next time. */
  public Follower(Formulas formulas) {
    this.formulas = formulas;
  }

  /**
   * The model that computes a result from its inputs: the formula in the result's cell and those of
   * all cells between.
   *
   * @throws FormulaException if the result holds no formula or its cells refer to each other in a
   *     circle
   */
  public CellModel model(Cells cells, CellAddress result, List<CellAddress> inputs) {
    Set<CellAddress> ends = new HashSet<>(inputs);
    if (ends.contains(result)) {
      throw FormulaException.of("formula.both", result.place());
    }
    CellContent content = cells.at(result);
    if (!(content instanceof CellContent.Formula)) {
      throw FormulaException.of("formula.none", result.place());
    }
    return new CellModel(result, inputs, new Precedents(cells, formulas, result, content, ends));
  }

  /**
   * The numbers that the cells of a range amount to, row by row; empty for a blank cell.
   *
   * @throws FormulaException if a cell holds a text, an error, or a formula that has no number
   */
  public List<OptionalDouble> numbers(Cells cells, CellRange range) {
    return numbers(cells, range, cells.rows(range));
  }

  /**
   * The same of cells that have been read.
   *
   * @param rows what they hold, as {@link Cells#rows} gives it
   */
  public List<OptionalDouble> numbers(Cells cells, CellRange range, List<List<CellContent>> rows) {
    List<OptionalDouble> numbers = new ArrayList<>();
    for (CellAddress cell : range.cells()) {
      int row = cell.row() - range.top();
      int column = cell.column() - range.left();
      boolean used = row < rows.size() && column < rows.get(row).size();
      numbers.add(used ? number(cells, cell, rows.get(row).get(column)) : OptionalDouble.empty());
    }
    return numbers;
  }

  private OptionalDouble number(Cells cells, CellAddress cell, CellContent content) {
    if (content instanceof CellContent.Number number) {
      return OptionalDouble.of(number.value());
    }
    if (content instanceof CellContent.Empty) {
      return OptionalDouble.empty();
    }
    Precedents precedents = new Precedents(cells, formulas, cell, content, Set.of());
    try {
      return OptionalDouble.of(new CellModel(cell, List.of(), precedents).value());
    } catch (FormulaException problem) {
      throw problem.in(cell.place());
    }
  }
}
