package tenthmark.checker.cli;

import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tenthmark.checker.rules.Rule;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.measurement.wording.Language;

/** {@code explain RULE}. */
@Command(
    name = "explain",
    description = {
      "Explains one rule: what it looks for, why that matters, how to fix it, and an example.",
      "",
      "Each finding names its rule; \"rules\" prints all."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    exitCodeList = {
      "0:the rule is explained",
      "3:there is no such rule, or the command line is wrong"
    },
    footer = {
      "  tenthmark-checker explain total-differs",
      "  tenthmark-checker explain --language de total-differs"
    })
final class ExplainCommand implements Callable<Integer> {

  /** The ids, offered by shell completion. */
  static final class Ids implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return RuleCatalogue.load().ids().stream().sorted().iterator();
    }
  }

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "RULE",
      description = "The rule's id, such as total-differs.",
      completionCandidates = Ids.class)
  private String id;

  @Mixin private LanguageOption language;

  @Override
  public Integer call() {
    List<Rule> rules = RuleCatalogue.load().rules();
    RuleDeclaration rule =
        rules.stream()
            .map(Rule::declaration)
            .filter(declaration -> declaration.id().equals(id))
            .findFirst()
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "there is no rule " + id + "; rules are " + String.join(", ", new Ids())));
    new RuleText(CheckerTexts.in(language.language().orElse(Language.ENGLISH)))
        .lines(rule)
        .forEach(spec.commandLine().getOut()::println);
    return 0;
  }
}
