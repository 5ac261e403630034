package tenthmark.samples.guide;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import tenthmark.checker.report.Program;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.measurement.wording.Sentences;

/** The guide to the rules of the checker, in Markdown, from what each rule declares. */
public final class RulePage {

  private static final Sentences TEXTS = CheckerTexts.english();

  private RulePage() {}

  /** The whole page: what there is by severity, then one section for each rule. */
  public static String text() {
    List<RuleDeclaration> rules =
        RuleCatalogue.load().rules().stream().map(rule -> rule.declaration()).toList();
    return """
        # What the checker looks for

        Every rule of the checker: what it looks for, why that matters, how to put it right, and an
        example. This page is made from the rules themselves. People and numbers are invented.

        **What this is not for.** %s

        An **error** is wrong, a **warning** is probably wrong or incomplete, a **note** is worth a
        look and does not count. A course may change the severity of a rule in its profile: see the
        [instructor's page](instructor.md).

        | Rule | Severity | Looks for |
        |---|---|---|
        %s
        %s\
        """
        .formatted(
            Program.caution(TEXTS),
            rules.stream().map(RulePage::row).collect(Collectors.joining()),
            rules.stream().map(RulePage::section).collect(Collectors.joining("\n")));
  }

  private static String row(RuleDeclaration rule) {
    return "| [%1$s](#%1$s) | %2$s | %3$s |\n"
        .formatted(rule.id(), severity(rule), escaped(TEXTS.say(rule.looksFor())));
  }

  private static String section(RuleDeclaration rule) {
    return """
        ## %s

        *%s.* %s

        - Why: %s
        - To fix: %s
        - Example: %s
        """
        .formatted(
            rule.id(),
            severity(rule),
            escaped(TEXTS.say(rule.looksFor())),
            escaped(TEXTS.say(rule.why())),
            escaped(TEXTS.say(rule.fix())),
            escaped(TEXTS.say(rule.example())));
  }

  private static String severity(RuleDeclaration rule) {
    return rule.severity().name().toLowerCase(Locale.ROOT);
  }

  /** The signs of a formula are no markup. */
  private static String escaped(String text) {
    return text.replaceAll("[*_|\\[\\]<>]", "\\\\$0");
  }
}
