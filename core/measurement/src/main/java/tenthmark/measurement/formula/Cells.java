package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cells of a document as the formula engine reads them: Calc's, or a file's. */
public interface Cells {

  /** What long calculations have cost since this recalculation of the document began. */
  Effort effort();

  /** Whether the document has a sheet with this name, in any letter case. */
  boolean hasSheet(String name);

  /** What a cell holds; an address outside the document's sheets is empty. */
  CellContent at(CellAddress address);

  /**
   * What the cells of a range hold, row by row. Rows and columns at the end that hold nothing may
   * be left out, so that a whole column costs no more than its used part. A document that is slow
   * to ask overrides this and answers in one go.
   */
  default List<List<CellContent>> rows(CellRange range) {
    List<List<CellContent>> rows = new ArrayList<>();
    for (int row = range.top(); row <= range.bottom(); row++) {
      List<CellContent> cells = new ArrayList<>();
      for (int column = range.left(); column <= range.right(); column++) {
        cells.add(at(new CellAddress(range.sheet(), column, row)));
      }
      rows.add(cells);
    }
    return rows;
  }

  /** What a name stands for as seen from a sheet, if it is defined. */
  Optional<NamedFormula> named(String name, String sheet);

  /**
   * What the document itself has computed for a formula cell, if it has: a number, a text, an error
   * or nothing. To carry uncertainties, the engine asks only where it cannot compute the cell and
   * no measured input lies behind it.
   */
  Optional<CellContent> shown(CellAddress address);
}
