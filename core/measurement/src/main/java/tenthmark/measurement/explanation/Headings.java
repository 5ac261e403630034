package tenthmark.measurement.explanation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;

/** What the cells of a table are called by the texts around them. */
record Headings(Cells cells) {

  /** Rows above and columns to the left in which a heading is looked for. */
  private static final int NEAR = 60;

  /** The first text to the left in the row and the nearest one above, as far as there are any. */
  List<String> of(CellAddress cell) {
    return Stream.of(leftOf(cell), above(cell)).flatMap(Optional::stream).distinct().toList();
  }

  /** The text above a column of cells, or the first one to the left of a row. */
  List<String> of(CellRange range) {
    if (range.width() == 1) {
      return above(range.first()).stream().toList();
    }
    return range.height() == 1 ? leftOf(range.first()).stream().toList() : List.of();
  }

  private Optional<String> leftOf(CellAddress cell) {
    if (cell.column() == 0) {
      return Optional.empty();
    }
    int from = Math.max(0, cell.column() - NEAR);
    return contents(new CellRange(cell.sheet(), from, cell.row(), cell.column() - 1, cell.row()))
        .map(Headings::text)
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** The next text above, or the topmost one of the unbroken column in which that stands. */
  private Optional<String> above(CellAddress cell) {
    if (cell.row() == 0) {
      return Optional.empty();
    }
    int from = Math.max(0, cell.row() - NEAR);
    List<CellContent> upwards =
        new ArrayList<>(
            contents(
                    new CellRange(cell.sheet(), cell.column(), from, cell.column(), cell.row() - 1))
                .toList());
    Collections.reverse(upwards);
    return upwards.stream()
        .dropWhile(content -> text(content).isEmpty())
        .takeWhile(content -> !(content instanceof CellContent.Empty))
        .map(Headings::text)
        .flatMap(Optional::stream)
        .reduce((lower, upper) -> upper);
  }

  private Stream<CellContent> contents(CellRange range) {
    return cells.rows(range).stream().flatMap(List::stream);
  }

  private static Optional<String> text(CellContent content) {
    return content instanceof CellContent.Text text && !text.text().isBlank()
        ? Optional.of(text.text().strip())
        : Optional.empty();
  }
}
