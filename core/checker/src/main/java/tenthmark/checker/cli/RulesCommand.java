package tenthmark.checker.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import tenthmark.checker.rules.Rule;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.measurement.wording.Language;

/** {@code rules}. */
@Command(
    name = "rules",
    description =
        "Prints every rule: what it looks for, why that matters, how to fix it, an example.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    exitCodeList = {"0:the rules are printed", ExitStatus.WRONG},
    footer = {"  tenthmark-checker rules", "  tenthmark-checker rules --language fr"})
final class RulesCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Mixin private LanguageOption language;

  @Override
  public void run() {
    PrintWriter out = spec.commandLine().getOut();
    RuleText text = new RuleText(CheckerTexts.in(language.language().orElse(Language.ENGLISH)));
    for (Rule rule : RuleCatalogue.load().rules()) {
      text.lines(rule.declaration()).forEach(out::println);
      out.println();
    }
  }
}
