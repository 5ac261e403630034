package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.wording.Message;

/** A LAB function that computes with arguments which are hardly meant. */
@AutoService(Rule.class)
public final class ArgumentUnlikely implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("argument-unlikely", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    return inspection
        .sheets()
        .flatMap(Sheet::cells)
        .flatMap(
            cell ->
                inspection
                    .evaluation()
                    .doubt(cell.address())
                    .map(doubt -> finding(cell, doubt))
                    .stream())
        .toList();
  }

  private static Finding finding(Cell cell, Message doubt) {
    return DECLARATION.finding(
        cell.address(),
        cell.content() instanceof Content.Formula formula
            ? Message.of("found.formula", doubt, formula.shown())
            : doubt,
        Message.of("argument-unlikely.expected"));
  }
}
