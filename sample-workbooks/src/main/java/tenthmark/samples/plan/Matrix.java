package tenthmark.samples.plan;

import java.util.List;
import org.apache.poi.ss.util.CellReference;

/**
 * A function that fills a block of cells.
 *
 * @param key by which formulas name a cell by its row and column: {@code {curve.1.2}}
 * @param title what stands above it
 * @param headings above its columns
 * @param formula with names as in a {@link Row}
 * @param rows how many it fills
 * @param format of its numbers
 */
public record Matrix(
    String key, String title, List<String> headings, String formula, int rows, String format)
    implements Block {

  private static final int FIRST_ROW = 2;

  /** Copies the headings. */
  public Matrix {
    headings = List.copyOf(headings);
  }

  @Override
  public int height() {
    return FIRST_ROW + rows;
  }

  @Override
  public void locate(int row, Places places) {
    for (int i = 1; i <= rows; i++) {
      for (int j = 1; j <= headings.size(); j++) {
        places.put(key + "." + i + "." + j, address(j, row + FIRST_ROW + i - 1));
      }
    }
  }

  @Override
  public void write(int row, BlockWriter writer) {
    writer.title(row, title);
    writer.book().headings(writer.sheet(), row + 1, headings);
    writer
        .sheet()
        .putMatrix(
            address(1, row + FIRST_ROW) + ":" + address(headings.size(), row + height() - 1),
            writer.places().resolved(formula, writer.name(), key),
            writer.book().calculated(format));
  }

  private static String address(int column, int row) {
    return CellReference.convertNumToColString(column - 1) + row;
  }
}
