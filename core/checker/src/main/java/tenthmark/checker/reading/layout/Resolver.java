package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;

/**
 * Picks among proposals that overlap: the one with most evidence comes first, and a record of
 * another whose value or uncertainty it takes falls away. Each number ends in at most one record,
 * but for an uncertainty that is stated for several.
 */
public final class Resolver {

  private final Set<CellAddress> values = new HashSet<>();
  private final Set<CellAddress> sizes = new HashSet<>();
  private final Set<CellAddress> shared = new HashSet<>();
  private final Map<CellAddress, Integer> lines = new HashMap<>();
  private final List<Settled> order = new ArrayList<>();

  /** A proposal with the records of it that stand. */
  public record Settled(Proposal proposal, List<Draft> drafts) {}

  /** The proposals with the records that are left of each, strongest first. */
  public static List<Settled> resolve(List<Proposal> proposals) {
    Resolver resolver = new Resolver();
    proposals.stream()
        .sorted(Comparator.comparing(Proposal::evidence).reversed())
        .forEach(resolver::take);
    return List.copyOf(resolver.order);
  }

  private void take(Proposal proposal) {
    int number = order.size();
    List<Draft> stand = new ArrayList<>();
    for (Draft draft : proposal.drafts()) {
      if (isFree(draft, number)) {
        stand.add(draft);
      }
    }
    stand.forEach(draft -> take(draft, number));
    order.add(new Settled(proposal, stand));
  }

  /** Whether neither its numbers nor its line belong to a record of a stronger proposal. */
  private boolean isFree(Draft draft, int number) {
    boolean value =
        draft
            .place(Field.VALUE)
            .filter(cell -> lines.getOrDefault(cell, number) == number)
            .filter(cell -> !values.contains(cell))
            .filter(cell -> !sizes.contains(cell) && !shared.contains(cell))
            .isPresent();
    boolean uncertainty =
        draft
            .place(Field.UNCERTAINTY)
            .filter(
                cell ->
                    values.contains(cell)
                        || !draft.isSharing() && (sizes.contains(cell) || shared.contains(cell)))
            .isEmpty();
    return value && uncertainty;
  }

  private void take(Draft draft, int number) {
    draft.cellsBeside().forEach(cell -> lines.putIfAbsent(cell.address(), number));
    draft
        .places()
        .forEach(
            (field, cell) -> {
              if (field == Field.VALUE || field == Field.RESULT) {
                values.add(cell);
              } else if (field == Field.UNCERTAINTY) {
                (draft.isSharing() ? shared : sizes).add(cell);
              } else if (Field.CONTRIBUTIONS.contains(field)) {
                sizes.add(cell);
              }
            });
  }
}
