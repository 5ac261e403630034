package tenthmark.checker.reading.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.record.Field;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * A mean, a sum or a difference is in the unit of its values, where nothing beside it states one.
 */
public final class SeriesUnits {

  private static final Set<String> KEEPING =
      Set.of("AVERAGE", "MEDIAN", "SUM", "MIN", "MAX", "ABS", "ROUND", "TRIMMEAN");
  private static final Pattern CHANGING = Pattern.compile("[*/^]");

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
        .filter(SeriesUnits::isOfOneUnit)
        .flatMap(cell -> evaluation.references(cell).stream())
        .map(CellRange::first)
        .map(byValue::get)
        .filter(Objects::nonNull)
        .map(first -> unit(first, evaluation))
        .filter(unit -> !unit.isEmpty())
        .findFirst()
        .ifPresent(unit -> mean.unit(Field.VALUE, unit));
  }

  private static String unit(Draft draft, Evaluation evaluation) {
    String stated = draft.unit(Field.VALUE);
    return stated.isEmpty()
        ? draft.place(Field.UNIT).map(evaluation::at).map(SeriesUnits::text).orElse("")
        : stated;
  }

  private static String text(Outcome outcome) {
    return outcome instanceof Outcome.Known known && known.value() instanceof Value.Text text
        ? text.text().strip()
        : "";
  }

  /** A mean, a sum or a difference. */
  private static boolean isOfOneUnit(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        && KEEPING.containsAll(formula.functions())
        && !CHANGING.matcher(formula.text()).find();
  }
}
