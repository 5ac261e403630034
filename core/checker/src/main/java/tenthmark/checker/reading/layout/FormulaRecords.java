package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;

/**
 * Values and their uncertainties that formulas alone tell apart, in whatever layout: a label to the
 * left or above names them, and their unit stands there or beside them. What words tell stands
 * above this; where there is no unit, too little is known to call it missing.
 */
final class FormulaRecords implements Layout {

  private static final int WEAK = 7;

  @Override
  public boolean isOfWholeSheet() {
    return true;
  }

  @Override
  public List<Proposal> propose(Block block, Surroundings surroundings) {
    List<Draft> drafts = new ArrayList<>();
    surroundings
        .pairs()
        .all()
        .forEach(
            (uncertainty, value) -> {
              if (value.sheet().equals(block.sheet().name())) {
                draft(uncertainty, value, surroundings).ifPresent(drafts::add);
              }
            });
    return drafts.isEmpty()
        ? List.of()
        : List.of(
            new Proposal(drafts, block.area(), Direction.ROWS, Map.of(), Map.of(), Map.of(), WEAK));
  }

  private static Optional<Draft> draft(
      CellAddress uncertainty, CellAddress value, Surroundings surroundings) {
    Labels labels = new Labels(surroundings);
    Optional<Labels.Label> label = labels.left(value).or(() -> labels.above(value));
    if (label.isEmpty() || isOfNoMeasurement(label.get())) {
      return Optional.empty();
    }
    Optional<String> unit = NearbyUnits.near(surroundings, value, uncertainty);
    Draft draft = new Draft(value.row());
    draft.put(Field.VALUE, value).put(Field.UNCERTAINTY, uncertainty);
    draft.say(
        Field.QUANTITY,
        label.get().heading().name().isEmpty()
            ? label.get().cell().text()
            : label.get().heading().name());
    draft.say(Field.SYMBOL, label.get().heading().symbol());
    return unit.map(found -> draft.unit(Field.VALUE, found));
  }

  private static boolean isOfNoMeasurement(Labels.Label label) {
    return label.heading().can(Role.COMPARISON) || label.heading().can(Role.ACCEPTED);
  }
}
