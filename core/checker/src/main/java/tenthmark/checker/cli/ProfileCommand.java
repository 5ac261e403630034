package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tenthmark.checker.course.Course;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.profile.ProfileStart;
import tenthmark.checker.profile.ProfileText;
import tenthmark.checker.report.ReadingText;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Reason;
import tenthmark.checker.workbook.TimeLimit;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.wording.Sentences;

/** {@code profile init WORKBOOK} and {@code profile hand-out WORKBOOK}. */
@Command(
    name = "profile",
    description = "Works on course profiles.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    exitCodeList = {"0:what was asked for was written", "2:it was not", ExitStatus.WRONG},
    footer = {
      "  tenthmark-checker profile init first-table.ods --out course.yaml",
      "  tenthmark-checker profile hand-out lab-2.ods --profile lab-2.yaml --out for-students.ods"
    },
    subcommands = {ProfileCommand.Init.class, HandOutCommand.class})
final class ProfileCommand {

  /**
   * A profile and what is to be said about the workbook that it was started from.
   *
   * @param remarks in English, as all messages
   */
  private record Started(String profile, List<String> remarks) {

    static Started from(String name, Workbook workbook) {
      Inspection inspection = Inspection.of(workbook, Catalogue.load(), Course.PLAIN);
      String profile = ProfileStart.write(name, inspection);
      Sentences english = CheckerTexts.english();
      List<String> remarks = new ArrayList<>();
      inspection
          .coverage()
          .unread()
          .forEach(unread -> remarks.add(english.say(ReadingText.unread(unread))));
      findings(profile, workbook)
          .forEach(
              finding ->
                  remarks.add(
                      finding.cell()
                          + ": a check by this profile finds "
                          + finding.rule().id()
                          + ": "
                          + english.say(finding.told())));
      return new Started(profile, remarks);
    }

    /** What the profile makes the rules find in the workbook itself. */
    private static List<Finding> findings(String profile, Workbook workbook) {
      RuleCatalogue rules = RuleCatalogue.load();
      if (!(new ProfileReader(rules.ids()).read(profile) instanceof ProfileText.Usable usable)) {
        throw new IllegalStateException("the profile that was written cannot be read");
      }
      Profile own = usable.profile();
      return rules
          .check(Inspection.of(workbook, Catalogue.load(), own.course()), own.grading())
          .stream()
          .filter(finding -> finding.rule().severity() != Severity.NOTE)
          .toList();
    }
  }

  @Command(
      name = "init",
      description = {
        "Writes a commented profile to start from: the convention, quantities, units and divisions"
            + " of a workbook's records, and how its tables were read. Its values do not become"
            + " accepted values.",
        "",
        "Standard error names what was not read in the workbook, and what a check of it by this"
            + " profile finds."
      },
      mixinStandardHelpOptions = true,
      versionProvider = Version.class,
      exitCodeList = {
        "0:the profile was written",
        "2:the workbook cannot be read, the file exists",
        ExitStatus.WRONG
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
        Started started = started();
        write(started.profile());
        started.remarks().forEach(remark -> err.println(workbook + ": " + remark));
        return 0;
      } catch (UnreadableFileException unreadable) {
        err.println(workbook + ": cannot be read: " + unreadable.getMessage());
      } catch (FileAlreadyExistsException exists) {
        err.println(out + ": exists already and is kept");
      } catch (IOException problem) {
        err.println(out + ": cannot be written: " + Reason.of(problem));
      }
      return Main.FAILED;
    }

    private Started started() throws UnreadableFileException {
      return TimeLimit.within(
          Limits.DEFAULT.time(), () -> Started.from(name(), WorkbookFile.read(workbook)));
    }

    private String name() {
      return workbook.getFileName().toString();
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
