package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tenthmark.checker.reading.TableGuide;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Tables that the course says how to read; its word stands above all evidence.
 *
 * @param guides of all sheets
 */
record GuidedTables(List<TableGuide> guides) implements Layout {

  /** Above what any other layout can bring forward. */
  private static final int CERTAIN = 1_000_000;

  @Override
  public List<Proposal> propose(Block block, Surroundings surroundings) {
    List<Proposal> proposals = new ArrayList<>();
    for (TableGuide guide : guides) {
      if (guide.range().sheet().equalsIgnoreCase(block.sheet().name())
          && block.area().contains(firstFilled(guide.range(), block))) {
        proposals.add(proposal(guide, block, surroundings));
      }
    }
    return proposals;
  }

  private static CellAddress firstFilled(CellRange range, Block block) {
    return block.cells().stream()
        .map(TypedCell::address)
        .filter(range::contains)
        .findFirst()
        .orElse(new CellAddress("", 0, 0));
  }

  private static Proposal proposal(TableGuide guide, Block block, Surroundings surroundings) {
    Direction direction = guide.across() ? Direction.COLUMNS : Direction.ROWS;
    CellRange turned = direction.turned(guide.range());
    List<Draft> drafts = new ArrayList<>();
    Map<CellAddress, Field> headings = new HashMap<>();
    for (int line = turned.top(); line <= turned.bottom(); line++) {
      Draft draft = new Draft(line);
      List<TypedCell> beside = new ArrayList<>();
      for (Map.Entry<Integer, Field> field : guide.fields().entrySet()) {
        CellAddress place = direction.address(block.sheet().name(), line, field.getKey());
        draft.put(field.getValue(), place);
        block.at(place).ifPresent(beside::add);
        heading(guide, direction, field, block, surroundings, draft);
      }
      boolean filled =
          draft
              .place(Field.VALUE)
              .flatMap(block::at)
              .filter(c -> c.mayBeNumber() || Column.isAmount(c.text()))
              .isPresent();
      if (filled) {
        drafts.add(draft.beside(beside));
      }
    }
    return new Proposal(drafts, guide.range(), direction, headings, Map.of(), Map.of(), CERTAIN);
  }

  /** The heading before the first line may state a unit or name the quantity. */
  private static void heading(
      TableGuide guide,
      Direction direction,
      Map.Entry<Integer, Field> field,
      Block block,
      Surroundings surroundings,
      Draft draft) {
    int before = direction.turned(guide.range()).top() - 1;
    if (before < 0) {
      return;
    }
    block
        .at(direction.address(block.sheet().name(), before, field.getKey()))
        .filter(TypedCell::isText)
        .flatMap(cell -> surroundings.grammar().read(cell.text()))
        .ifPresent(
            heading -> {
              draft.unit(field.getValue(), heading.unit());
              if (field.getValue() == Field.VALUE
                  && !guide.fields().containsValue(Field.QUANTITY)) {
                draft.say(Field.QUANTITY, heading.name());
              }
            });
  }
}
