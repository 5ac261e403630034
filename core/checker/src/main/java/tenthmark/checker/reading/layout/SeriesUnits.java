package tenthmark.checker.reading.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.record.Field;
import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** A mean is in the unit of its values, where nothing beside it states one. */
public final class SeriesUnits {

  private SeriesUnits() {}

  /** Hands the units of records on to the means that are computed from them. */
  public static void inherit(Evaluation evaluation, List<Resolver.Settled> settled) {
    Map<CellAddress, Draft> byValue = new HashMap<>();
    for (Resolver.Settled table : settled) {
      for (Draft draft : table.drafts()) {
        draft.place(Field.VALUE).ifPresent(cell -> byValue.putIfAbsent(cell, draft));
      }
    }
    byValue.forEach(
        (cell, draft) -> {
          if (draft.unit(Field.VALUE).isEmpty() && draft.place(Field.UNIT).isEmpty()) {
            inherit(cell, draft, byValue, evaluation);
          }
        });
  }

  private static void inherit(
      CellAddress value, Draft mean, Map<CellAddress, Draft> byValue, Evaluation evaluation) {
    mean.cellsBeside().stream()
        .filter(cell -> cell.address().equals(value))
        .filter(SeriesUnits::isMean)
        .flatMap(cell -> evaluation.references(cell).stream())
        .map(CellRange::first)
        .map(byValue::get)
        .filter(first -> first != null && !first.unit(Field.VALUE).isEmpty())
        .findFirst()
        .ifPresent(first -> mean.unit(Field.VALUE, first.unit(Field.VALUE)));
  }

  private static boolean isMean(Cell cell) {
    return NativeFunctions.of(cell).stream().anyMatch(NativeFunctions.MEANS::contains);
  }
}
