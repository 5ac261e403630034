package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tenthmark.checker.handout.CourseSheet;
import tenthmark.checker.handout.HandOut;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.profile.ProfileForStudents;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Reason;
import tenthmark.checker.workbook.UnreadableFileException;

/** {@code profile hand-out WORKBOOK}. */
@Command(
    name = "hand-out",
    description = {
      "Writes what students get: a copy of a prepared workbook (.xlsx, .xlsm, .ods) with the"
          + " profile's convention, which the LAB functions then follow, and the profile itself"
          + " inside, without accepted values and points. Blank cells can be filled in; all others"
          + " are protected, without a password.",
      "",
      "Check This Workbook in Calc, and check without --profile, go by the profile inside. The"
          + " prepared workbook is only read, and no file is overwritten."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    exitCodeList = {"0:the copy is written", "2:no copy is written", ExitStatus.WRONG},
    footer =
        "  tenthmark-checker profile hand-out lab-2.ods --profile lab-2.yaml --out"
            + " for-students.ods")
final class HandOutCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "WORKBOOK", description = "The prepared workbook.")
  private Path prepared;

  @Option(
      names = "--profile",
      paramLabel = "COURSE.YAML",
      required = true,
      description = "The course's profile.")
  private Path profile;

  @Option(names = "--out", paramLabel = "FILE", required = true, description = "The copy.")
  private Path out;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<Profile> course = ProfileFile.read(profile, err);
    if (course.isEmpty()) {
      return Main.FAILED;
    }
    try {
      write(HandOut.of(prepared, sheet(course.get())));
      return 0;
    } catch (UnreadableFileException unreadable) {
      err.println(prepared + ": " + unreadable.getMessage());
    } catch (FileAlreadyExistsException present) {
      err.println(out + ": exists already and is not overwritten");
    } catch (IOException problem) {
      err.println(out + ": cannot be written: " + Reason.of(problem));
    }
    return Main.FAILED;
  }

  private CourseSheet sheet(Profile course) throws IOException {
    return CourseSheet.of(
        course.course().convention(),
        ProfileForStudents.of(profile),
        CheckerTexts.in(course.language()));
  }

  private void write(byte[] copy) throws IOException {
    Files.write(out, copy, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
  }
}
