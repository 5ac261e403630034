package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tenthmark.checker.course.Course;
import tenthmark.checker.profile.ProfileStart;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.TimeLimit;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;

/** {@code profile init WORKBOOK}. */
@Command(
    name = "profile",
    description = "Works on course profiles.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    exitCodeList = {"0:the profile was written", "2:it was not, or the command line is wrong"},
    footer = "  tenthmark-checker profile init first-table.ods --out course.yaml",
    subcommands = ProfileCommand.Init.class)
final class ProfileCommand {

  @Command(
      name = "init",
      description = {
        "Writes a commented profile to start from: the quantities, units and divisions of a "
            + "workbook's records. Its values do not become accepted values."
      },
      mixinStandardHelpOptions = true,
      versionProvider = Version.class,
      exitCodeList = {
        "0:the profile was written",
        "2:the workbook cannot be read, the file exists, or the command line is wrong"
      },
      footer = {
        "  tenthmark-checker profile init first-table.ods",
        "  tenthmark-checker profile init first-table.ods --out course.yaml"
      })
  static final class Init implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Parameters(paramLabel = "WORKBOOK", description = "The workbook, .xlsx, .xlsm, .xls or .ods.")
    private Path workbook;

    @Option(
        names = "--out",
        paramLabel = "FILE",
        description = "Where to write it, instead of standard output. An existing file is kept.")
    private Path out;

    @Override
    public Integer call() {
      PrintWriter err = spec.commandLine().getErr();
      try {
        write(profile());
        return 0;
      } catch (UnreadableFileException unreadable) {
        err.println(workbook + ": cannot be read: " + unreadable.getMessage());
      } catch (FileAlreadyExistsException exists) {
        err.println(out + ": exists already and is kept");
      } catch (IOException problem) {
        err.println(out + ": cannot be written: " + problem);
      }
      return Main.FAILED;
    }

    private String profile() throws UnreadableFileException {
      return TimeLimit.within(
          Limits.DEFAULT.time(),
          () ->
              ProfileStart.write(
                  workbook.getFileName().toString(),
                  Inspection.of(WorkbookFile.read(workbook), Catalogue.load(), Course.PLAIN)
                      .records()));
    }

    private void write(String profile) throws IOException {
      if (out == null) {
        spec.commandLine().getOut().print(profile);
        spec.commandLine().getOut().flush();
      } else {
        Files.writeString(out, profile, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      }
    }
  }
}
