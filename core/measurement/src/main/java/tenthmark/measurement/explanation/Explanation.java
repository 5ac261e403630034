package tenthmark.measurement.explanation;

import java.util.List;
import java.util.Optional;

/**
 * What a cell does.
 *
 * @param cell its address
 * @param formula the formula; empty if it holds none
 * @param words what it does, in sentences
 * @param contributions what makes up the uncertainty, if the formula gives one from contributions
 * @param problem why it has no value, if it has none, or why what it has can hardly be meant
 * @param function the LAB function that the reference says more about, if one is called
 */
public record Explanation(
    String cell,
    String formula,
    List<String> words,
    Optional<Contributions> contributions,
    Optional<Problem> problem,
    Optional<String> function) {

  /** The same with the formula as the user sees it. */
  public Explanation withFormula(String shown) {
    return formula.isEmpty()
        ? this
        : new Explanation(cell, shown, words, contributions, problem, function);
  }

  /** A cell without formula. */
  static Explanation typedIn(String cell, List<String> words, Optional<Problem> problem) {
    return new Explanation(cell, "", words, Optional.empty(), problem, Optional.empty());
  }

  /**
   * Why a cell has no value, or one that can hardly be meant.
   *
   * @param sentence what is wrong
   * @param fix what to do about it
   */
  public record Problem(String sentence, String fix) {}
}
