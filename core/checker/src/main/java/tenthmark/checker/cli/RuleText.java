package tenthmark.checker.cli;

import java.util.List;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.measurement.wording.Sentences;

/** A rule as the command line explains it. */
final class RuleText {

  private static final Sentences TEXTS = CheckerTexts.english();

  private RuleText() {}

  static List<String> lines(RuleDeclaration rule) {
    return List.of(
        rule.id() + " (" + TextReport.word(rule.severity()) + ")",
        "  looks for: " + TEXTS.say(rule.looksFor()),
        "  why:       " + TEXTS.say(rule.why()),
        "  to fix:    " + TEXTS.say(rule.fix()),
        "  example:   " + TEXTS.say(rule.example()));
  }
}
