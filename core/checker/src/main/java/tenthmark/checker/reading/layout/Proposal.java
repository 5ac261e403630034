package tenthmark.checker.reading.layout;

import java.util.List;
import java.util.Map;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * A table that a layout sees.
 *
 * @param drafts its records
 * @param area the cells that it takes, headings included
 * @param direction how its records lie
 * @param headings the headings and labels that it understood, by the part that they name
 * @param roles what the numbers in it are that are no part of a record
 * @param strange the heading of each number that it could make nothing of
 * @param evidence how much speaks for it
 */
public record Proposal(
    List<Draft> drafts,
    CellRange area,
    Direction direction,
    Map<CellAddress, Field> headings,
    Map<CellAddress, NumberRole> roles,
    Map<CellAddress, String> strange,
    int evidence) {

  /** Copies the collections. */
  public Proposal {
    drafts = List.copyOf(drafts);
    headings = Map.copyOf(headings);
    roles = Map.copyOf(roles);
    strange = Map.copyOf(strange);
  }
}
