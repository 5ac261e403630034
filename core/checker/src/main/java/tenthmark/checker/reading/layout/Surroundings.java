package tenthmark.checker.reading.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.formula.UncertaintyPairs;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellAddress;

/**
 * What a layout may look at besides a block.
 *
 * @param grammar how headings are read
 * @param sheets the visible sheets
 * @param pairs what formulas tell of uncertainties
 * @param commons by sheet, once they are asked for
 */
public record Surroundings(
    Workbook workbook,
    Evaluation evaluation,
    Course course,
    HeadingGrammar grammar,
    List<TypedSheet> sheets,
    UncertaintyPairs pairs,
    Map<String, CommonUncertainties> commons) {

  /** With nothing known of common uncertainties yet. */
  public Surroundings(
      Workbook workbook,
      Evaluation evaluation,
      Course course,
      HeadingGrammar grammar,
      List<TypedSheet> sheets) {
    this(
        workbook,
        evaluation,
        course,
        grammar,
        sheets,
        new UncertaintyPairs(sheets, evaluation),
        new HashMap<>());
  }

  /** A visible sheet. */
  Optional<TypedSheet> sheet(String name) {
    return sheets.stream().filter(sheet -> sheet.name().equalsIgnoreCase(name)).findFirst();
  }

  /** The cell at a place, if it shows something on a visible sheet. */
  Optional<TypedCell> at(CellAddress cell) {
    return sheet(cell.sheet()).flatMap(sheet -> sheet.at(cell.column(), cell.row()));
  }

  /** The uncertainties that a sheet states once for many values; it is searched once. */
  CommonUncertainties common(TypedSheet sheet) {
    return commons.computeIfAbsent(sheet.name(), name -> new CommonUncertainties(sheet, this));
  }
}
