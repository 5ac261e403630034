package tenthmark.checker.cli;

import java.util.List;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.RuleDeclaration;

/** A rule as the command line explains it. */
final class RuleText {

  private RuleText() {}

  static List<String> lines(RuleDeclaration rule) {
    return List.of(
        rule.id() + " (" + TextReport.word(rule.severity()) + ")",
        "  looks for: " + rule.looksFor(),
        "  why:       " + rule.why(),
        "  to fix:    " + rule.fix(),
        "  example:   " + rule.example());
  }
}
