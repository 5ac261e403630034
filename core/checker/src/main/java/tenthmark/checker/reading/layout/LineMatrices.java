package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.block.Block;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * The matrix of LINEST over two rows or five: slope and intercept side by side, their standard
 * uncertainties beneath, and below that how well the line fits.
 */
final class LineMatrices implements Layout {

  private static final String FUNCTION = "LINEST";

  @Override
  public List<Proposal> propose(Block block, Surroundings surroundings) {
    List<Draft> drafts = new ArrayList<>();
    Map<CellAddress, NumberRole> numbers = new HashMap<>();
    for (TypedCell cell : block.cells()) {
      matrix(cell).ifPresent(area -> read(area, block, new Labels(surroundings), drafts, numbers));
    }
    return drafts.isEmpty()
        ? List.of()
        : List.of(
            new Proposal(drafts, block.area(), Direction.COLUMNS, Map.of(), numbers, Map.of(), 9));
  }

  private static Optional<CellRange> matrix(TypedCell cell) {
    return NativeFunctions.of(cell.cell()).contains(FUNCTION)
        ? cell.formula()
            .flatMap(formula -> formula.array())
            .filter(area -> area.first().equals(cell.address()) && area.height() > 1)
        : Optional.empty();
  }

  /** Without a word beside or above it nobody says what the numbers are. */
  private static boolean isLabelled(CellRange area, Block block) {
    return isText(block, area.left() - 1, area.top()) || isText(block, area.left(), area.top() - 1);
  }

  private static boolean isText(Block block, int column, int row) {
    return block.sheet().at(column, row).filter(TypedCell::isText).isPresent();
  }

  private static void read(
      CellRange area,
      Block block,
      Labels labels,
      List<Draft> drafts,
      Map<CellAddress, NumberRole> numbers) {
    for (CellAddress cell : area.cells()) {
      if (cell.row() > area.top() + 1) {
        numbers.put(cell, NumberRole.STATISTIC);
      }
    }
    for (int column = area.left(); column <= area.right(); column++) {
      CellAddress value = new CellAddress(area.sheet(), column, area.top());
      Draft draft = new Draft(area.top());
      draft.put(Field.VALUE, value);
      draft.put(Field.UNCERTAINTY, new CellAddress(area.sheet(), column, area.top() + 1));
      labels
          .above(value)
          .ifPresent(
              label -> {
                draft.say(
                    Field.QUANTITY,
                    label.heading().name().isEmpty()
                        ? label.cell().text()
                        : label.heading().name());
                draft.unit(Field.VALUE, label.heading().unit());
              });
      if (block.at(value).filter(TypedCell::isNumber).isPresent() && isLabelled(area, block)) {
        drafts.add(draft);
      }
    }
  }
}
