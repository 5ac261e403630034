package tenthmark.checker.reading.layout;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** Texts that a formula makes of a record's value and uncertainty: the record's stated result. */
public final class ShownResults {

  private ShownResults() {}

  /**
   * Joins each such text to the record that it shows, if the record has none yet; it is no record
   * of its own then.
   */
  public static List<Resolver.Settled> join(
      List<TypedSheet> sheets, Evaluation evaluation, List<Resolver.Settled> settled) {
    Map<CellAddress, Draft> byValue = new HashMap<>();
    for (Resolver.Settled table : settled) {
      for (Draft draft : table.drafts()) {
        draft.place(Field.VALUE).ifPresent(cell -> byValue.putIfAbsent(cell, draft));
      }
    }
    Set<CellAddress> shown = new HashSet<>();
    for (TypedSheet sheet : sheets) {
      for (TypedCell cell : sheet.cells()) {
        if (cell.isText() && cell.isFormula() && StatedTexts.isResult(cell)) {
          shown(cell, evaluation, byValue)
              .ifPresent(
                  draft -> {
                    draft.put(Field.RESULT, cell.address());
                    shown.add(cell.address());
                  });
        }
      }
    }
    return settled.stream().map(table -> without(shown, table)).toList();
  }

  private static Resolver.Settled without(Set<CellAddress> shown, Resolver.Settled table) {
    List<Draft> left =
        table.drafts().stream()
            .filter(draft -> draft.place(Field.VALUE).filter(shown::contains).isEmpty())
            .toList();
    return new Resolver.Settled(table.proposal(), left);
  }

  private static Optional<Draft> shown(
      TypedCell cell, Evaluation evaluation, Map<CellAddress, Draft> byValue) {
    List<CellRange> references = evaluation.references(cell.cell());
    return references.stream()
        .filter(range -> range.width() == 1 && range.height() == 1)
        .map(range -> byValue.get(range.first()))
        .filter(draft -> draft != null && refersToUncertainty(draft, references))
        .findFirst();
  }

  private static boolean refersToUncertainty(Draft draft, List<CellRange> references) {
    return draft
        .place(Field.UNCERTAINTY)
        .filter(cell -> references.stream().anyMatch(range -> range.contains(cell)))
        .isPresent();
  }
}
