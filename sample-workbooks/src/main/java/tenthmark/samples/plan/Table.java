package tenthmark.samples.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellReference;

/**
 * A table with a heading over each column.
 *
 * @param key by which formulas name the cells of a whole column: {@code {points.force}}
 * @param title what stands above it
 * @param columns from column A on
 * @param rows from top to bottom
 */
public record Table(String key, String title, List<Column> columns, List<Row> rows)
    implements Block {

  private static final int FIRST_ROW = 2;

  /** Copies the lists. */
  public Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  @Override
  public int height() {
    return FIRST_ROW + rows.size();
  }

  @Override
  public void locate(int row, Places places) {
    int top = row + FIRST_ROW;
    for (int column = 0; column < columns.size(); column++) {
      String heading = columns.get(column).key();
      places.put(key + "." + heading + ".heading", address(column, top - 1));
      for (int i = 0; i < rows.size(); i++) {
        places.put(rows.get(i).key() + "." + heading, address(column, top + i));
      }
      places.put(
          key + "." + heading, address(column, top) + ":" + address(column, top + rows.size() - 1));
    }
    List<Integer> sizes =
        IntStream.range(0, columns.size())
            .filter(column -> columns.get(column).isContribution())
            .boxed()
            .toList();
    if (!sizes.isEmpty()) {
      for (int i = 0; i < rows.size(); i++) {
        places.put(
            rows.get(i).key() + ".contributions",
            address(sizes.get(0), top + i) + ":" + address(sizes.get(sizes.size() - 1), top + i));
      }
    }
  }

  @Override
  public void write(int row, BlockWriter writer) {
    writer.title(row, title);
    writer.book().headings(writer.sheet(), row + 1, columns.stream().map(Column::heading).toList());
    for (int i = 0; i < rows.size(); i++) {
      int own = row + FIRST_ROW + i;
      for (int column = 0; column < columns.size(); column++) {
        writer.cell(
            address(column, own),
            rows.get(i).content(columns.get(column)),
            rows.get(i),
            columns.get(column).given());
      }
    }
  }

  private static String address(int column, int row) {
    return CellReference.convertNumToColString(column) + row;
  }
}
