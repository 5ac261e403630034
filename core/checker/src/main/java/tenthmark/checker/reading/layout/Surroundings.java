package tenthmark.checker.reading.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.workbook.Workbook;

/**
 * What a layout may look at besides a block.
 *
 * @param grammar how headings are read
 * @param sheets the visible sheets
 * @param commons by sheet, once they are asked for
 */
public record Surroundings(
    Workbook workbook,
    Evaluation evaluation,
    Course course,
    HeadingGrammar grammar,
    List<TypedSheet> sheets,
    Map<String, CommonUncertainties> commons) {

  /** With nothing known of common uncertainties yet. */
  public Surroundings(
      Workbook workbook,
      Evaluation evaluation,
      Course course,
      HeadingGrammar grammar,
      List<TypedSheet> sheets) {
    this(workbook, evaluation, course, grammar, sheets, new HashMap<>());
  }

  /** The uncertainties that a sheet states once for many values; it is searched once. */
  CommonUncertainties common(TypedSheet sheet) {
    return commons.computeIfAbsent(sheet.name(), name -> new CommonUncertainties(sheet, this));
  }
}
