package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import tenthmark.checker.evaluation.Call;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.record.Field;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Records told by LAB functions alone: one that states a result of a value and an uncertainty in
 * its own row. Contributions are told by their functions, if those make up the whole total.
 */
final class LabResults implements Layout {

  @Override
  public List<Proposal> propose(Block block, Surroundings surroundings) {
    Map<Integer, List<TypedCell>> rows = new TreeMap<>();
    block.cells().stream()
        .filter(TypedCell::isFormula)
        .filter(cell -> !surroundings.evaluation().calls(cell.cell()).isEmpty())
        .forEach(
            cell -> rows.computeIfAbsent(cell.address().row(), row -> new ArrayList<>()).add(cell));
    List<Draft> drafts = new ArrayList<>();
    rows.forEach((row, cells) -> draft(row, cells, block, surroundings).ifPresent(drafts::add));
    return drafts.isEmpty()
        ? List.of()
        : List.of(
            new Proposal(drafts, block.area(), Direction.ROWS, Map.of(), Map.of(), Map.of(), 8));
  }

  private static Optional<Draft> draft(
      int row, List<TypedCell> cells, Block block, Surroundings surroundings) {
    Draft draft = new Draft(row);
    for (TypedCell cell : cells) {
      for (Call call : surroundings.evaluation().calls(cell.cell())) {
        if (call.is(FunctionRole.RESULT)) {
          draft.put(Field.RESULT, cell.address());
          place(call, "value", row).ifPresent(place -> draft.put(Field.VALUE, place));
          place(call, "uncertainty", row).ifPresent(place -> draft.put(Field.UNCERTAINTY, place));
          place(call, "unit", row).ifPresent(place -> draft.put(Field.UNIT, place));
        }
      }
    }
    boolean filled = draft.place(Field.VALUE).flatMap(block::at).isPresent();
    if (!filled || draft.place(Field.UNCERTAINTY).isEmpty()) {
      return Optional.empty();
    }
    contributions(draft, cells, block, surroundings);
    new Labels(surroundings)
        .left(draft.place(Field.VALUE).orElseThrow())
        .ifPresent(label -> draft.say(Field.QUANTITY, label.cell().text()));
    return Optional.of(draft.beside(block.row(row)));
  }

  private static void contributions(
      Draft draft, List<TypedCell> cells, Block block, Surroundings surroundings) {
    Map<Field, CellAddress> found = new EnumMap<>(Field.class);
    for (TypedCell cell : cells) {
      surroundings.evaluation().calls(cell.cell()).stream()
          .flatMap(call -> LabRoles.contribution(call).stream())
          .findFirst()
          .ifPresent(field -> found.putIfAbsent(field, cell.address()));
    }
    Optional<Set<CellAddress>> total = totalled(draft, block, surroundings);
    if (total.filter(found.values()::containsAll).isPresent()) {
      found.forEach(draft::put);
    }
  }

  /** The cells with content that the total adds up. */
  private static Optional<Set<CellAddress>> totalled(
      Draft draft, Block block, Surroundings surroundings) {
    return draft.place(Field.UNCERTAINTY).flatMap(block::at).stream()
        .flatMap(cell -> surroundings.evaluation().calls(cell.cell()).stream())
        .filter(call -> call.is(FunctionRole.TOTAL))
        .flatMap(call -> call.range("contributions").stream())
        .map(range -> filled(range, block))
        .findFirst();
  }

  private static Set<CellAddress> filled(CellRange range, Block block) {
    return block.cells().stream()
        .map(TypedCell::address)
        .filter(range::contains)
        .collect(java.util.stream.Collectors.toSet());
  }

  private static Optional<CellAddress> place(Call call, String parameter, int row) {
    return call.range(parameter)
        .filter(range -> range.height() == 1 && range.width() == 1)
        .map(CellRange::first)
        .filter(address -> address.row() == row);
  }
}
