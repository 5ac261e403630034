package tenthmark.checker.reading.layout;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.Role;
import tenthmark.measurement.formula.CellAddress;

/** What the numbers of a table are that are no part of a record. */
final class OtherNumbers {

  private final List<Column> columns;
  private final Map<Integer, Role> roles;
  private final TableLines told;
  private final Map<CellAddress, NumberRole> numbers = new HashMap<>();
  private final Map<CellAddress, String> strange = new HashMap<>();

  OtherNumbers(List<Column> columns, Map<Integer, Role> roles, TableLines told) {
    this.columns = columns;
    this.roles = roles;
    this.told = told;
  }

  /** What the numbers are that are no part of a record. */
  void find(List<Draft> drafts, Set<Integer> inside) {
    Set<CellAddress> parts = new HashSet<>();
    drafts.forEach(draft -> parts.addAll(draft.places().values()));
    for (Column column : columns) {
      for (Map.Entry<Integer, TypedCell> entry : column.cells().entrySet()) {
        TypedCell cell = entry.getValue();
        if (cell.isNumber() && inside.contains(entry.getKey()) && !parts.contains(cell.address())) {
          role(column, entry.getKey(), cell);
        }
      }
    }
  }

  private void role(Column column, int line, TypedCell cell) {
    Optional<NumberRole> byLabel =
        told.label(line).flatMap(heading -> NumberRoles.of(heading.roles()));
    Role role = roles.get(column.place());
    Optional<NumberRole> byHeading = role == null ? Optional.empty() : NumberRoles.of(Set.of(role));
    Optional<NumberRole> found =
        byLabel
            .filter(label -> label != NumberRole.INDEX && label != NumberRole.DATE)
            .or(() -> byHeading)
            .or(() -> cell.isFormula() ? Optional.of(NumberRole.CALCULATED) : Optional.empty());
    if (found.isPresent()) {
      numbers.put(cell.address(), found.get());
    } else if (role == Role.VALUE || role == Role.MEAN) {
      if (!column.unit().isEmpty()) {
        numbers.put(cell.address(), NumberRole.RAW);
      } else {
        strange.put(cell.address(), column.heading().map(Heading::text).orElse(""));
      }
    } else if (role != null) {
      numbers.put(cell.address(), NumberRole.CALCULATED);
    } else {
      strange.put(cell.address(), column.heading().map(Heading::text).orElse(""));
    }
  }

  /** The role of each number of which something is known. */
  Map<CellAddress, NumberRole> known() {
    return numbers;
  }

  /** The heading of each number of which nothing is. */
  Map<CellAddress, String> strange() {
    return strange;
  }
}
