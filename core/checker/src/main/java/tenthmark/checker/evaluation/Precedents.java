package tenthmark.checker.evaluation;

import java.util.Collections;
import java.util.Iterator;
import java.util.NoSuchElementException;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellRange;

/**
 * The cells with content in several ranges, one after another and never listed: formulas that each
 * refer to a whole column would need the square of its length.
 */
final class Precedents implements Iterator<Cell> {

  private final Workbook workbook;
  private final Iterator<CellRange> ranges;
  private Iterator<Cell> cells = Collections.emptyIterator();

  Precedents(Workbook workbook, Iterator<CellRange> ranges) {
    this.workbook = workbook;
    this.ranges = ranges;
  }

  @Override
  public boolean hasNext() {
    while (!cells.hasNext() && ranges.hasNext()) {
      CellRange range = ranges.next();
      cells =
          workbook
              .sheet(range.sheet())
              .map(sheet -> sheet.cellsIn(range))
              .orElse(Collections.emptyIterator());
    }
    return cells.hasNext();
  }

  @Override
  public Cell next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    return cells.next();
  }
}
