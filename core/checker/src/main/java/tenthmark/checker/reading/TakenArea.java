package tenthmark.checker.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Cells side by side that were taken for the same, be it in one record or in several.
 *
 * @param taken what the first of them was taken for
 */
public record TakenArea(CellRange range, Taken taken) {

  private static final Comparator<TakenArea> PLACE =
      Comparator.comparing((TakenArea area) -> area.range().top())
          .thenComparing(area -> area.range().left());

  /** All cells that were taken for something, sheet by sheet and from top to bottom. */
  public static List<TakenArea> of(Coverage coverage) {
    Map<String, Map<Object, List<CellAddress>>> sheets = new LinkedHashMap<>();
    coverage
        .cells()
        .forEach(
            (cell, taken) ->
                sheets
                    .computeIfAbsent(cell.sheet(), sheet -> new LinkedHashMap<>())
                    .computeIfAbsent(kind(taken), kind -> new ArrayList<>())
                    .add(cell));
    return sheets.values().stream()
        .flatMap(
            kinds ->
                kinds.values().stream()
                    .flatMap(cells -> Areas.of(cells).stream())
                    .map(range -> new TakenArea(range, coverage.cells().get(range.first())))
                    .sorted(PLACE))
        .toList();
  }

  /** A part of one record is the same as that of another. */
  private static Object kind(Taken taken) {
    return taken instanceof Taken.Part part ? part.field() : taken;
  }
}
