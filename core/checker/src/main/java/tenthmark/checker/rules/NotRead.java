package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.reading.CoverageSummary.Unread;
import tenthmark.measurement.wording.Message;

/** What the checker could make nothing of: one finding for each reason on a sheet. */
@AutoService(Rule.class)
public final class NotRead implements Rule {

  private static final RuleDeclaration DECLARATION = new RuleDeclaration("not-read", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    return inspection.coverage().unread().stream().map(NotRead::finding).toList();
  }

  private static Finding finding(Unread unread) {
    return DECLARATION.finding(
        unread.first(),
        Message.of("not-read.found", unread.places(), unread.why()),
        Message.of("no-fault"));
  }
}
