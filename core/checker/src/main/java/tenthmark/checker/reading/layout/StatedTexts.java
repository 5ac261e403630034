package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Amount;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.result.RecordText;

/**
 * Results written as one text, such as 12.30 ± 0.05 cm under any heading or beside any label, and
 * lines such as g = (9.80 ± 0.13) m/s². What a formula joins may show a record that stands
 * elsewhere: {@link ShownResults} knows.
 */
final class StatedTexts implements Layout {

  @Override
  public List<Proposal> propose(Block block, Surroundings surroundings) {
    Labels labels = new Labels(surroundings);
    List<Draft> drafts = new ArrayList<>();
    Map<CellAddress, Field> headings = new HashMap<>();
    for (TypedCell cell : block.cells()) {
      if (cell.isText() && isResult(cell) && (!cell.isFormula() || tells(cell, surroundings))) {
        drafts.add(draft(cell, labels, headings));
      }
    }
    return drafts.isEmpty()
        ? List.of()
        : List.of(
            new Proposal(drafts, block.area(), Direction.ROWS, headings, Map.of(), Map.of(), 5));
  }

  /** A formula tells a result of its own if it computes it of cells and says the unit. */
  private static boolean tells(TypedCell cell, Surroundings surroundings) {
    return !surroundings.evaluation().references(cell.cell()).isEmpty()
        && Amount.stated(cell.text())
            .or(() -> Amount.inSentence(cell.text()))
            .filter(text -> !text.unit().isEmpty())
            .isPresent();
  }

  /** Whether a text states a result; a sentence does only if a formula makes it. */
  static boolean isResult(TypedCell cell) {
    return cell.text().chars().anyMatch(Character::isDigit)
        && (Amount.stated(cell.text()).flatMap(RecordText::uncertainty).isPresent()
            || cell.isFormula() && Amount.inSentence(cell.text()).isPresent());
  }

  private static Draft draft(TypedCell cell, Labels labels, Map<CellAddress, Field> headings) {
    Draft draft = new Draft(cell.address().row());
    draft.put(Field.VALUE, cell.address());
    String named = Amount.nameBefore(cell.text());
    if (!named.isEmpty()) {
      draft.say(Field.QUANTITY, named);
    }
    Optional<Labels.Label> left = labels.left(cell.address());
    Optional<Labels.Label> above = labels.above(cell.address());
    for (Optional<Labels.Label> label : List.of(above.filter(l -> !isOfTable(l)), left, above)) {
      label.ifPresent(
          found -> {
            draft.say(Field.QUANTITY, name(found.heading()));
            draft.heading(found.cell().address());
            headings.put(found.cell().address(), Field.VALUE);
          });
    }
    above.ifPresent(found -> draft.unit(Field.VALUE, unit(cell, found.heading())));
    left.ifPresent(found -> draft.unit(Field.VALUE, unit(cell, found.heading())));
    return draft;
  }

  /** A heading such as value names the part, not the quantity. */
  private static boolean isOfTable(Labels.Label label) {
    return label.heading().name().isEmpty() || label.heading().can(Role.RESULT);
  }

  private static String name(Heading heading) {
    return heading.name().isEmpty() ? heading.text() : heading.name();
  }

  private static String unit(TypedCell cell, Heading heading) {
    boolean own = Amount.stated(cell.text()).filter(text -> !text.unit().isEmpty()).isPresent();
    return own ? "" : heading.unit();
  }
}
