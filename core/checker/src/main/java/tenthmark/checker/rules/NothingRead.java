package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.measurement.wording.Message;

/** A workbook with numbers in which no record was recognised: no other rule had anything to see. */
@AutoService(Rule.class)
public final class NothingRead implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("nothing-read", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    if (!inspection.coverage().isNothing(inspection.records().size())) {
      return List.of();
    }
    Evaluation evaluation = inspection.evaluation();
    int numbers = inspection.coverage().numbers();
    return inspection.reading().coverage().cells().keySet().stream()
        .filter(cell -> evaluation.number(cell).isPresent())
        .limit(1)
        .map(
            cell ->
                DECLARATION.finding(
                    cell,
                    Message.counted("nothing-read.found", numbers),
                    Message.of("nothing-read.expected")))
        .toList();
  }
}
