package tenthmark.checker.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.OptionalInt;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import tenthmark.checker.workbook.Reason;

/** The command line of the checker. */
@Command(
    name = "tenthmark-checker",
    description = {
      "Checks lab workbooks for their measurement records: values, units, uncertainties, "
          + "rationales, digits and formulas. Files are only read, never changed.",
      "",
      "Results go to standard output, messages to standard error.",
      "",
      "A teaching aid: not for calibration, safety or legal decisions."
    },
    subcommands = {
      CheckCommand.class,
      ReadingCommand.class,
      RulesCommand.class,
      ExplainCommand.class,
      PlainCommand.class,
      ProfileCommand.class,
      AutoComplete.GenerateCompletion.class
    },
    versionProvider = Version.class,
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    exitCodeList = {ExitStatus.CLEAN, ExitStatus.FOUND, ExitStatus.FAILED, ExitStatus.WRONG},
    footer = {
      "  tenthmark-checker check --profile course.yaml --out feedback handed-in",
      "  tenthmark-checker explain total-differs",
      "  tenthmark-checker check --help"
    })
public final class Main {

  /** A file could not be checked. */
  static final int FAILED = 2;

  /** What the command line asks for cannot be done, and nothing was. */
  static final int WRONG = 3;

  private Main() {}

  /** Runs the checker and ends the program with its exit status. */
  public static void main(String[] arguments) {
    OptionalInt elsewhere = ReadableLocale.run();
    if (elsewhere.isPresent()) {
      System.exit(elsewhere.getAsInt());
    }
    // System.out would swallow that the disk is full.
    PrintWriter results = writer(new FileOutputStream(FileDescriptor.out));
    System.exit(run(commandLine(results, writer(System.err)), arguments));
  }

  /** Runs a command; whatever goes wrong is said in a line, and is never taken for a finding. */
  static int run(CommandLine command, String... arguments) {
    try {
      return command.execute(arguments);
    } catch (Throwable fault) {
      return failed(command, fault);
    }
  }

  private static int failed(CommandLine command, Throwable fault) {
    command.getErr().println("tenthmark-checker failed: " + Reason.of(fault));
    return FAILED;
  }

  static CommandLine commandLine(PrintWriter out, PrintWriter err) {
    CommandLine checker = new CommandLine(new Main());
    HelpSections.apply(checker);
    return checker
        .setOut(out)
        .setErr(err)
        .registerConverter(Path.class, new NamedPath())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(Main::refuse)
        .setExecutionExceptionHandler((fault, command, parsed) -> failed(command, fault));
  }

  /**
   * Says in a line what is wrong with the command line; whoever gives no command learns them all.
   */
  private static int refuse(ParameterException fault, String[] arguments) {
    CommandLine command = fault.getCommandLine();
    PrintWriter err = command.getErr();
    if (arguments.length == 0) {
      command.usage(err);
    } else {
      String help = command.getCommandSpec().qualifiedName() + " --help";
      err.println(fault.getMessage() + " (see " + help + ")");
      UnmatchedArgumentException.printSuggestions(fault, err);
    }
    return WRONG;
  }

  /** UTF-8 into files and pipes; a terminal says itself what it can show. */
  private static PrintWriter writer(OutputStream stream) {
    Charset shown = Terminal.find().map(Console::charset).orElse(StandardCharsets.UTF_8);
    Charset charset = shown.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : shown;
    return new PrintWriter(new OutputStreamWriter(stream, charset), true);
  }
}
