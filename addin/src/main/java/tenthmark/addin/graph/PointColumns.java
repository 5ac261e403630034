package tenthmark.addin.graph;

import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.menu.RefusalException;

/**
 * Which columns of a table are the points: x and y, and their uncertainties if it has them.
 *
 * @param headings whether the first row holds headings
 * @param x number of its column on the sheet
 */
record PointColumns(
    CellRangeAddress table,
    boolean headings,
    int x,
    Optional<Integer> xUncertainty,
    int y,
    Optional<Integer> yUncertainty) {

  private static final int FEWEST_POINTS = 3;

  /** As in u(t), ut or Δt; the letter is the symbol of the column before. */
  private static final Pattern UNCERTAINTY_OF =
      Pattern.compile("\\s*[uδΔσ][(_ ]*(?<symbol>\\p{L})(?!\\p{L}).*");

  private static final List<String> WORDS =
      List.of("uncertainty", "unsicherheit", "incertitude", "incertidumbre", "±");

  /** Those of a table, by what its headings say, else by their order. */
  static PointColumns of(CellRangeAddress table, SheetCells sheet) throws Exception {
    boolean headings = !sheet.isNumber(lastWithNumbers(table, sheet), table.StartRow);
    int top = headings ? table.StartRow + 1 : table.StartRow;
    List<Integer> columns = new ArrayList<>();
    for (int column = table.StartColumn; column <= table.EndColumn; column++) {
      if (sheet.numbers(column, top, table.EndRow) >= FEWEST_POINTS) {
        columns.add(column);
      }
    }
    List<String> titles = new ArrayList<>();
    for (int column : columns) {
      titles.add(headings ? sheet.shown(column, table.StartRow) : "");
    }
    return of(table, headings, columns, titles)
        .orElseThrow(() -> new RefusalException("graph.select"));
  }

  private static int lastWithNumbers(CellRangeAddress table, SheetCells sheet) throws Exception {
    for (int column = table.EndColumn; column > table.StartColumn; column--) {
      if (sheet.numbers(column, table.StartRow, table.EndRow) >= FEWEST_POINTS) {
        return column;
      }
    }
    return table.StartColumn;
  }

  private static Optional<PointColumns> of(
      CellRangeAddress table, boolean headings, List<Integer> columns, List<String> titles) {
    List<Integer> uncertain =
        IntStream.range(1, columns.size())
            .filter(place -> isUncertainty(titles.get(place), titles.get(place - 1)))
            .boxed()
            .toList();
    List<Integer> values =
        IntStream.range(0, columns.size())
            .filter(place -> !uncertain.contains(place))
            .boxed()
            .toList();
    if (values.size() == 2) {
      return Optional.of(
          new PointColumns(
              table,
              headings,
              columns.get(values.get(0)),
              behind(values.get(0), uncertain).map(columns::get),
              columns.get(values.get(1)),
              behind(values.get(1), uncertain).map(columns::get)));
    }
    return switch (uncertain.isEmpty() ? columns.size() : 0) {
      case 3 ->
          Optional.of(
              new PointColumns(
                  table,
                  headings,
                  columns.get(0),
                  Optional.empty(),
                  columns.get(1),
                  Optional.of(columns.get(2))));
      case 4 ->
          Optional.of(
              new PointColumns(
                  table,
                  headings,
                  columns.get(0),
                  Optional.of(columns.get(1)),
                  columns.get(2),
                  Optional.of(columns.get(3))));
      default -> Optional.empty();
    };
  }

  private static Optional<Integer> behind(int value, List<Integer> uncertain) {
    return Optional.of(value + 1).filter(uncertain::contains);
  }

  private static boolean isUncertainty(String title, String before) {
    String small = title.toLowerCase(Locale.ROOT);
    Matcher symbol = UNCERTAINTY_OF.matcher(title);
    return WORDS.stream().anyMatch(small::contains)
        || symbol.matches() && before.contains(symbol.group("symbol"));
  }

  int firstRow() {
    return headings ? table.StartRow + 1 : table.StartRow;
  }

  /** The title of a column; a letter where it has none. */
  String title(int column, SheetCells sheet) throws Exception {
    String letter = column == x ? "x" : "y";
    String title = headings ? sheet.shown(column, table.StartRow).strip() : "";
    return title.isEmpty() ? letter : title;
  }

  /** The cells of a column with numbers, as formulas name them. */
  String cells(int column) {
    return Places.fixed(column, firstRow()) + ":" + Places.fixed(column, table.EndRow);
  }

  /** The arguments of the functions for lines: x, y and their uncertainties. */
  String arguments() {
    String all =
        String.join(
            ";",
            cells(x),
            cells(y),
            xUncertainty.map(this::cells).orElse(""),
            yUncertainty.map(this::cells).orElse(""));
    return all.replaceAll(";+$", "");
  }
}
