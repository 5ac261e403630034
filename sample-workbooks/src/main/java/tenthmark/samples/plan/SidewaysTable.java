package tenthmark.samples.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellReference;

/**
 * A table whose rows stand side by side, from column B on, with the headings in column A.
 *
 * @param title what stands above it
 * @param columns from top to bottom
 * @param rows from left to right
 */
public record SidewaysTable(String title, List<Column> columns, List<Row> rows) implements Block {

  private static final int FIRST_ROW = 1;

  /** Copies the lists. */
  public SidewaysTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  @Override
  public int height() {
    return FIRST_ROW + columns.size();
  }

  @Override
  public void locate(int row, Places places) {
    int[] sizes =
        IntStream.range(0, columns.size())
            .filter(column -> columns.get(column).isContribution())
            .toArray();
    for (int i = 0; i < rows.size(); i++) {
      String key = rows.get(i).key();
      for (int column = 0; column < columns.size(); column++) {
        places.put(key + "." + columns.get(column).key(), address(i, row, column));
      }
      places.put(
          key + ".contributions",
          address(i, row, sizes[0]) + ":" + address(i, row, sizes[sizes.length - 1]));
    }
  }

  @Override
  public void write(int row, BlockWriter writer) {
    writer.title(row, title);
    for (int column = 0; column < columns.size(); column++) {
      Column heading = columns.get(column);
      writer
          .sheet()
          .put("A" + (row + FIRST_ROW + column), heading.heading(), writer.styles().heading());
      for (int i = 0; i < rows.size(); i++) {
        writer.cell(
            address(i, row, column), rows.get(i).content(heading), rows.get(i), heading.given());
      }
    }
  }

  private static String address(int index, int top, int column) {
    return CellReference.convertNumToColString(index + 1) + (top + FIRST_ROW + column);
  }
}
