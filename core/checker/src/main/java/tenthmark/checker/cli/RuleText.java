package tenthmark.checker.cli;

import java.util.List;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/**
 * A rule as the command line explains it.
 *
 * @param texts what is said, in one language
 */
record RuleText(Sentences texts) {

  private static final List<String> TITLES =
      List.of("rule.looks-for", "rule.why", "rule.fix", "rule.example");

  List<String> lines(RuleDeclaration rule) {
    return List.of(
        rule.id() + " (" + texts.say(rule.severity().inWords()) + ")",
        line("rule.looks-for", rule.looksFor()),
        line("rule.why", rule.why()),
        line("rule.fix", rule.fix()),
        line("rule.example", rule.example()));
  }

  private String line(String title, Message text) {
    int width = TITLES.stream().mapToInt(key -> texts.say(key).length()).max().orElseThrow();
    String label = texts.say(title) + ":";
    return "  " + label + " ".repeat(width + 2 - label.length()) + texts.say(text);
  }
}
