package tenthmark.checker.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.Rule;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RuleDeclaration;

/** {@code rules}. */
@Command(
    name = "rules",
    description = "Prints every rule: what it looks for, why that matters, how to fix it.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class RulesCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    PrintWriter out = spec.commandLine().getOut();
    for (Rule rule : RuleCatalogue.load().rules()) {
      RuleDeclaration declaration = rule.declaration();
      out.println(declaration.id() + " (" + TextReport.word(declaration.severity()) + ")");
      out.println("  looks for: " + declaration.looksFor());
      out.println("  why:       " + declaration.why());
      out.println("  to fix:    " + declaration.fix());
      out.println();
    }
  }
}
