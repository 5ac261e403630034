package tenthmark.checker.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** Cells as few ranges, for people to read. */
public final class Areas {

  private static final Comparator<CellAddress> DOWN_THE_COLUMNS =
      Comparator.comparing(CellAddress::column).thenComparing(CellAddress::row);

  private static final Comparator<CellRange> ALONG_THE_ROWS =
      Comparator.comparing(CellRange::top)
          .thenComparing(CellRange::bottom)
          .thenComparing(CellRange::left);

  private Areas() {}

  /**
   * Joins the cells of one sheet that stand below each other, and then the columns of the same rows
   * that stand side by side; from top to bottom.
   */
  public static List<CellRange> of(Collection<CellAddress> cells) {
    Joined columns = new Joined(Areas::isBelow);
    cells.stream().sorted(DOWN_THE_COLUMNS).forEach(cell -> columns.add(CellRange.of(cell)));
    Joined areas = new Joined(Areas::isBeside);
    columns.ranges().stream().sorted(ALONG_THE_ROWS).forEach(areas::add);
    return areas.ranges();
  }

  /** The ranges of cells of one sheet, such as C5:C9, C12. */
  public static String inWords(Collection<CellAddress> cells) {
    return String.join(", ", of(cells).stream().map(CellRange::place).toList());
  }

  /** Ranges of which each that continues the last one was joined to it. */
  private record Joined(BiPredicate<CellRange, CellRange> continues, List<CellRange> ranges) {

    Joined(BiPredicate<CellRange, CellRange> continues) {
      this(continues, new ArrayList<>());
    }

    void add(CellRange next) {
      int last = ranges.size() - 1;
      if (last >= 0 && continues.test(ranges.get(last), next)) {
        ranges.set(last, through(ranges.get(last), next));
      } else {
        ranges.add(next);
      }
    }
  }

  private static boolean isBelow(CellRange above, CellRange next) {
    return next.left() == above.left() && next.top() == above.bottom() + 1;
  }

  private static boolean isBeside(CellRange before, CellRange next) {
    return next.left() == before.right() + 1
        && next.top() == before.top()
        && next.bottom() == before.bottom();
  }

  private static CellRange through(CellRange first, CellRange last) {
    return new CellRange(first.sheet(), first.left(), first.top(), last.right(), last.bottom());
  }
}
