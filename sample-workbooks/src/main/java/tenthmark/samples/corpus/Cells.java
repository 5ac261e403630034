package tenthmark.samples.corpus;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;

/** Lists of cells, written as {@code B5:B9,B12} with the sheet before them if it is another. */
final class Cells {

  private Cells() {}

  /** Each cell by its address, those of another sheet with its name. */
  static List<String> of(String ranges) {
    return Arrays.stream(ranges.split(",")).flatMap(Cells::ofRange).toList();
  }

  private static Stream<String> ofRange(String range) {
    int end = range.indexOf('!') + 1;
    String sheet = range.substring(0, end);
    CellRangeAddress cells = CellRangeAddress.valueOf(range.substring(end));
    return StreamSupport.stream(cells.spliterator(), false)
        .map(CellAddress::formatAsString)
        .map(sheet::concat);
  }

  /** As many cells as wanted: one each, or the same one for all. */
  static List<String> forEach(List<String> wanted, String ranges) {
    List<String> cells = of(ranges);
    if (cells.size() == 1) {
      return wanted.stream().map(each -> cells.get(0)).toList();
    }
    if (cells.size() != wanted.size()) {
      throw new IllegalArgumentException(
          ranges + " has " + cells.size() + " cells for " + wanted.size() + " values");
    }
    return cells;
  }
}
