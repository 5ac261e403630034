package tenthmark.addin.explaining;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A table as lines of text in which the columns are aligned by blanks. */
final class Columns {

  private static final String BETWEEN = "  ";

  private Columns() {}

  /** Headings and rows; the first column is aligned to the left, numbers to the right. */
  static String aligned(List<String> headings, List<List<String>> rows) {
    List<List<String>> all = new ArrayList<>();
    all.add(headings);
    all.addAll(rows);
    int[] widths =
        IntStream.range(0, headings.size())
            .map(column -> all.stream().mapToInt(row -> row.get(column).length()).max().orElse(0))
            .toArray();
    return String.join("\n", all.stream().map(row -> line(row, widths)).toList());
  }

  private static String line(List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int column = 0; column < row.size(); column++) {
      String cell = row.get(column);
      String blanks = " ".repeat(widths[column] - cell.length());
      line.append(column == 0 ? "" : BETWEEN);
      line.append(isNumber(cell) ? blanks + cell : cell + blanks);
    }
    return line.toString().stripTrailing();
  }

  private static boolean isNumber(String cell) {
    return !cell.isEmpty() && (Character.isDigit(cell.charAt(0)) || cell.charAt(0) == '-');
  }
}
