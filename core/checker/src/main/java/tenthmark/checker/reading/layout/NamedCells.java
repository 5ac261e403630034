package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;
import tenthmark.checker.workbook.DefinedName;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** Single cells that the workbook has names for, a value and its uncertainty: mass and u_mass. */
final class NamedCells implements Layout {

  private static final String PREFIXES = "uds";

  @Override
  public List<Proposal> propose(Block block, Surroundings surroundings) {
    Map<String, CellAddress> names = names(block, surroundings);
    Labels labels = new Labels(surroundings);
    List<Draft> drafts = new ArrayList<>();
    names.forEach(
        (name, cell) ->
            value(name, names, surroundings)
                .ifPresent(
                    value -> {
                      CellAddress place = names.get(value);
                      Draft draft = new Draft(place.row());
                      draft.put(Field.VALUE, place).put(Field.UNCERTAINTY, cell);
                      labels
                          .left(place)
                          .ifPresent(
                              label -> {
                                draft.say(
                                    Field.QUANTITY,
                                    label.heading().name().isEmpty()
                                        ? label.cell().text()
                                        : label.heading().name());
                                draft.unit(Field.VALUE, label.heading().unit());
                              });
                      draft.say(Field.QUANTITY, value);
                      draft.say(Field.SYMBOL, value);
                      unit(place, block, surroundings)
                          .ifPresent(unit -> draft.put(Field.UNIT, unit));
                      draft.beside(block.row(place.row()));
                      drafts.add(draft);
                    }));
    return drafts.isEmpty()
        ? List.of()
        : List.of(
            new Proposal(drafts, block.area(), Direction.ROWS, Map.of(), Map.of(), Map.of(), 9));
  }

  private static Optional<CellAddress> unit(
      CellAddress value, Block block, Surroundings surroundings) {
    return block.at(value).stream()
        .flatMap(cell -> block.rightOf(cell).stream())
        .filter(cell -> cell.isText())
        .findFirst()
        .filter(cell -> surroundings.grammar().isUnit(cell.text()))
        .map(cell -> cell.address());
  }

  private static Map<String, CellAddress> names(Block block, Surroundings surroundings) {
    Map<String, CellAddress> names = new LinkedHashMap<>();
    for (DefinedName name : surroundings.workbook().names()) {
      surroundings
          .evaluation()
          .namedRange(name.name(), block.sheet().name())
          .filter(range -> range.width() == 1 && range.height() == 1)
          .map(CellRange::first)
          .filter(cell -> cell.sheet().equalsIgnoreCase(block.sheet().name()))
          .filter(block.area()::contains)
          .filter(cell -> block.at(cell).filter(found -> found.mayBeNumber()).isPresent())
          .ifPresent(cell -> names.put(name.name(), cell));
    }
    return names;
  }

  /** The name of the value that a name says the uncertainty of. */
  private static Optional<String> value(
      String name, Map<String, CellAddress> names, Surroundings surroundings) {
    Optional<String> spelled =
        surroundings
            .grammar()
            .read(name.replace('_', ' ').replace('.', ' '))
            .filter(heading -> heading.can(Role.UNCERTAINTY) || heading.mark() != Heading.Mark.NONE)
            .map(Heading::name)
            .flatMap(of -> named(of, names));
    return spelled.or(
        () -> {
          boolean prefixed =
              name.length() > 1 && PREFIXES.indexOf(name.toLowerCase(Locale.ROOT).charAt(0)) >= 0;
          String rest = name.length() > 1 ? name.substring(1).replaceFirst("^_", "") : "";
          return prefixed ? named(rest, names) : Optional.empty();
        });
  }

  private static Optional<String> named(String of, Map<String, CellAddress> names) {
    return names.keySet().stream()
        .filter(name -> name.equalsIgnoreCase(of) || name.equalsIgnoreCase(of.replace(' ', '_')))
        .findFirst();
  }
}
