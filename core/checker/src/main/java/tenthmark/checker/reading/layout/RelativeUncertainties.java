package tenthmark.checker.reading.layout;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.record.Field;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitReader;
import tenthmark.measurement.formula.CellAddress;

/**
 * Uncertainties that are a part of their value although no heading says so: a number that is shown
 * in percent beside a value that is not, one that formulas take for a part, and one bare number for
 * values in units that have nothing in common.
 */
public final class RelativeUncertainties {

  private static final String PART = "1";

  private final Surroundings surroundings;

  private RelativeUncertainties(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** States of such uncertainties that they are parts. */
  public static void find(Surroundings surroundings, List<Resolver.Settled> settled) {
    RelativeUncertainties relative = new RelativeUncertainties(surroundings);
    Map<CellAddress, Set<String>> units = new HashMap<>();
    for (Resolver.Settled table : settled) {
      table.drafts().forEach(draft -> relative.collect(draft, units));
    }
    for (Resolver.Settled table : settled) {
      table.drafts().forEach(draft -> relative.find(draft, units));
    }
  }

  private void collect(Draft draft, Map<CellAddress, Set<String>> units) {
    if (draft.isSharing() && draft.unit(Field.UNCERTAINTY).isEmpty()) {
      draft
          .place(Field.UNCERTAINTY)
          .ifPresent(
              cell ->
                  units
                      .computeIfAbsent(cell, none -> new HashSet<>())
                      .add(draft.unit(Field.VALUE)));
    }
  }

  private void find(Draft draft, Map<CellAddress, Set<String>> units) {
    Optional<CellAddress> value = draft.place(Field.VALUE);
    Optional<CellAddress> size = draft.place(Field.UNCERTAINTY);
    if (value.isEmpty() || size.isEmpty()) {
      return;
    }
    boolean shown = isShownInPercent(size.get()) && !isShownInPercent(value.get());
    boolean part = surroundings.pairs().valueOfPart(size.get()).equals(value);
    boolean unlike = areUnlike(units.getOrDefault(size.get(), Set.of()));
    if (shown || part && draft.unit(Field.UNCERTAINTY).isEmpty() || unlike) {
      draft.relative(PART);
    }
  }

  private boolean isShownInPercent(CellAddress cell) {
    return surroundings
        .workbook()
        .sheet(cell.sheet())
        .filter(sheet -> sheet.format(cell).percent())
        .isPresent();
  }

  /** Whether some of the units cannot be converted into one another. */
  private static boolean areUnlike(Set<String> units) {
    List<MeasurementUnit> known =
        units.stream().flatMap(unit -> UnitReader.STANDARD.read(unit).known().stream()).toList();
    return known.stream().anyMatch(unit -> known.get(0).to(unit).isEmpty());
  }
}
