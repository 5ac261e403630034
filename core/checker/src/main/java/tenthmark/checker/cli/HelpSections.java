package tenthmark.checker.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The sections that the help of every command has, in the order of a manual page. */
final class HelpSections {

  private HelpSections() {}

  /** Gives the commands below this one and the command itself their headings. */
  static void apply(CommandLine command) {
    UsageMessageSpec help = command.getCommandSpec().usageMessage();
    help.synopsisHeading("Usage:%n  ");
    help.descriptionHeading("%nDescription:%n");
    help.parameterListHeading("%nArguments:%n");
    help.optionListHeading("%nOptions:%n");
    help.commandListHeading("%nCommands:%n");
    help.exitCodeListHeading("%nExit status:%n");
    help.footerHeading("%nExamples:%n");
    command.getSubcommands().values().forEach(HelpSections::apply);
  }
}
