package tenthmark.samples.plan;

import org.apache.poi.ss.util.CellReference;

/**
 * A table with a merged heading above the headings of some columns.
 *
 * @param group what stands above them
 * @param first of the columns
 * @param last of the columns
 */
public record GroupedTable(Table table, String group, Column first, Column last) implements Block {

  @Override
  public int height() {
    return table.height();
  }

  @Override
  public void locate(int row, Places places) {
    table.locate(row, places);
  }

  @Override
  public void write(int row, BlockWriter writer) {
    table.write(row, writer);
    writer.sheet().put(place(first, row), group, writer.styles().heading());
    writer.sheet().merge(place(first, row) + ":" + place(last, row));
  }

  private String place(Column column, int row) {
    return CellReference.convertNumToColString(table.columns().indexOf(column)) + row;
  }
}
