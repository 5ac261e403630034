package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.formula.Spreads;
import tenthmark.checker.reading.formula.Sums;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;
import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.formula.CellAddress;

/**
 * What a total adds up are the contributions to it, wherever they stand: in its row, its column, or
 * on another sheet. Each has the kind that its function, its words or the scatter behind it says;
 * one of which nothing is said is taken to be of the object.
 */
public final class Contributions {

  private static final int MOST = Field.CONTRIBUTIONS.size();
  private static final int LONGEST_CHAIN = 3;

  private static final Optional<Field> READING = Optional.of(Field.READING);
  private static final List<Role> OF_SCALE = List.of(Role.ENDS, Role.DIVISION, Role.RESOLUTION);

  private static final List<Field> UNSAID =
      List.of(Field.PHYSICAL, Field.INSTRUMENT, Field.READING, Field.TIMING, Field.REPEAT);

  private final Surroundings surroundings;
  private final Labels labels;
  private final Set<CellAddress> taken = new HashSet<>();

  private Contributions(Surroundings surroundings, List<Resolver.Settled> settled) {
    this.surroundings = surroundings;
    this.labels = new Labels(surroundings);
    for (Resolver.Settled table : settled) {
      for (Draft draft : table.drafts()) {
        draft.place(Field.VALUE).ifPresent(taken::add);
        draft.place(Field.UNCERTAINTY).ifPresent(taken::add);
      }
    }
  }

  /** Adds the contributions that totals name to the records that the totals belong to. */
  public static void join(Surroundings surroundings, List<Resolver.Settled> settled) {
    Contributions contributions = new Contributions(surroundings, settled);
    settled.forEach(table -> table.drafts().forEach(contributions::join));
  }

  private void join(Draft draft) {
    Optional<TypedCell> total =
        draft.place(Field.UNCERTAINTY).flatMap(surroundings::at).map(this::origin);
    if (total.filter(cell -> Sums.isSum(cell.cell())).isEmpty()) {
      return;
    }
    List<TypedCell> parts =
        surroundings.evaluation().precedents(total.get().cell()).stream()
            .map(Cell::address)
            .flatMap(cell -> surroundings.at(cell).stream())
            .filter(TypedCell::mayBeNumber)
            .toList();
    boolean others = parts.stream().map(TypedCell::address).anyMatch(taken::contains);
    if (others || parts.isEmpty() || parts.size() > MOST) {
      return;
    }
    kinds(draft, parts, total.get()).forEach((field, cell) -> draft.put(field, cell));
  }

  /** The cell that another merely repeats. */
  private TypedCell origin(TypedCell cell) {
    TypedCell at = cell;
    for (int i = 0; i < LONGEST_CHAIN && Sums.isMerelyReference(at.cell()); i++) {
      Optional<TypedCell> next =
          surroundings.evaluation().precedents(at.cell()).stream()
              .findFirst()
              .map(Cell::address)
              .flatMap(surroundings::at);
      if (next.isEmpty()) {
        return at;
      }
      at = next.get();
    }
    return at;
  }

  /** The parts by kind; none at all if there are more than kinds for them. */
  private Map<Field, CellAddress> kinds(Draft draft, List<TypedCell> parts, TypedCell total) {
    Map<Field, CellAddress> kinds = new LinkedHashMap<>();
    List<TypedCell> left = new ArrayList<>();
    Set<Field> used = new HashSet<>();
    Set<CellAddress> placed = new HashSet<>();
    for (Field field : Field.CONTRIBUTIONS) {
      draft
          .place(field)
          .filter(cell -> surroundings.at(cell).isPresent())
          .ifPresent(
              cell -> {
                used.add(field);
                placed.add(cell);
              });
    }
    for (TypedCell part : parts) {
      if (placed.contains(part.address())) {
        continue;
      }
      Optional<Field> said = said(part, total).filter(used::add);
      said.ifPresentOrElse(field -> kinds.put(field, part.address()), () -> left.add(part));
    }
    for (TypedCell part : left) {
      Optional<Field> free = UNSAID.stream().filter(used::add).findFirst();
      free.ifPresent(field -> kinds.put(field, part.address()));
    }
    kinds.keySet().forEach(draft::drop);
    return kinds;
  }

  private Optional<Field> said(TypedCell part, TypedCell total) {
    return surroundings.evaluation().calls(part.cell()).stream()
        .flatMap(call -> LabRoles.contribution(call).stream())
        .findFirst()
        .or(() -> scatter(part))
        .or(() -> heading(part, total).flatMap(this::kind))
        .or(() -> behind(part).flatMap(this::kind));
  }

  private Optional<Field> scatter(TypedCell part) {
    boolean spread =
        Spreads.isOfSpread(part.cell(), surroundings.evaluation())
            || NativeFunctions.of(part.cell()).stream().anyMatch(NativeFunctions.SPREADS::contains);
    return spread ? Optional.of(Field.REPEAT) : Optional.empty();
  }

  /** What names a part: above it where the total stands in its row, else to its left. */
  private Optional<Heading> heading(TypedCell part, TypedCell total) {
    boolean inRow = part.address().row() == total.address().row();
    Optional<Labels.Label> first =
        inRow ? labels.above(part.address()) : labels.left(part.address());
    return first
        .or(() -> inRow ? labels.left(part.address()) : Optional.empty())
        .map(Labels.Label::heading);
  }

  /** The words behind a part that stands under nothing that names it. */
  private Optional<Heading> behind(TypedCell part) {
    TypedSheet sheet = surroundings.sheet(part.address().sheet()).orElseThrow();
    return sheet.row(part.address().row()).tailMap(part.address().column(), false).values().stream()
        .filter(cell -> cell.isText() && !surroundings.grammar().isUnit(cell.text()))
        .findFirst()
        .flatMap(cell -> surroundings.grammar().read(cell.text()));
  }

  private Optional<Field> kind(Heading heading) {
    Optional<Field> byRole =
        Field.CONTRIBUTIONS.stream()
            .filter(field -> heading.can(field.role()))
            .findFirst()
            .or(() -> OF_SCALE.stream().anyMatch(heading::can) ? READING : Optional.empty())
            .or(() -> heading.can(Role.REACTION) ? Optional.of(Field.TIMING) : Optional.empty())
            .or(() -> heading.can(Role.STATISTIC) ? Optional.of(Field.REPEAT) : Optional.empty());
    boolean instrument =
        surroundings.grammar().vocabulary().mentions(Notion.INSTRUMENT, heading.text());
    return byRole.or(() -> instrument ? Optional.of(Field.INSTRUMENT) : Optional.empty());
  }
}
