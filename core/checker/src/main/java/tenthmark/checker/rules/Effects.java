package tenthmark.checker.rules;

import java.util.List;
import tenthmark.measurement.formula.CellAddress;

/**
 * What would change if a finding were put right.
 *
 * @param vanishing the findings that would not be there
 * @param behind the cells of findings from which its own cell is calculated; nothing where no
 *     finding would vanish
 */
public record Effects(List<Cause> vanishing, List<CellAddress> behind) {

  /** Of a finding from which nothing follows, as far as is known. */
  static final Effects NONE = new Effects(List.of(), List.of());

  /** Copies the lists. */
  public Effects {
    vanishing = List.copyOf(vanishing);
    behind = List.copyOf(behind);
  }
}
