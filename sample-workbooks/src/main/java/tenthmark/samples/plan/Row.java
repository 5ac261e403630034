package tenthmark.samples.plan;

import java.util.HashMap;
import java.util.Map;

/**
 * A row of a table. A text that begins with an equals sign is a formula; in it {@code {value}}
 * stands for the cell of the row in the column with that key, {@code {m.value}} for the one of
 * another row.
 *
 * @param key by which formulas name it
 * @param format how its calculated numbers are shown
 * @param cells contents by the key of their column; blank where there is none
 */
public record Row(String key, String format, Map<String, Object> cells) {

  /** Copies the cells. */
  public Row {
    cells = Map.copyOf(cells);
  }

  /** A row without contents. */
  public static Row of(String key) {
    return new Row(key, "General", Map.of());
  }

  /** The same row with other content in one column. */
  public Row with(Column column, Object content) {
    Map<String, Object> all = new HashMap<>(cells);
    all.put(column.key(), content);
    return new Row(key, format, all);
  }

  /** The same row with its calculated numbers shown in another format. */
  public Row shown(String otherFormat) {
    return new Row(key, otherFormat, cells);
  }

  /** The content in a column. */
  public Object content(Column column) {
    return cells.getOrDefault(column.key(), "");
  }
}
