package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tenthmark.checker.plain.PlainCopy;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Reason;
import tenthmark.checker.workbook.UnreadableFileException;

/** {@code plain FILE}. */
@Command(
    name = "plain",
    description = {
      "Writes a copy of a workbook (.xlsx, .xlsm, .ods) for people without the extension: LAB"
          + " functions are replaced by their values, recalculated. All other formulas stay. The"
          + " original is only read, and no file is overwritten."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    exitCodeList = {
      "0:the copy is written and every value is recalculated",
      "1:the copy is written; standard error names cells whose value could not be recalculated",
      "2:no copy is written",
      ExitStatus.WRONG
    },
    footer = {
      "  tenthmark-checker plain lab-table.ods",
      "  tenthmark-checker plain lab-table.xlsx --out for-everyone.xlsx"
    })
final class PlainCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The workbook.")
  private Path source;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The copy; beside the original with -plain after its name by default.")
  private Path target;

  @Option(
      names = "--time-limit",
      paramLabel = "SECONDS",
      description =
          "After so much processor time the file is given up (default: ${DEFAULT-VALUE}).")
  private int timeLimit = Math.toIntExact(Limits.DEFAULT.time().toSeconds());

  @Override
  public Integer call() {
    if (timeLimit < 1) {
      throw new ParameterException(
          spec.commandLine(), "--time-limit is " + timeLimit + " but must be at least 1");
    }
    Limits limits = Limits.DEFAULT.withTime(Duration.ofSeconds(timeLimit));
    Path copy = target == null ? beside(source) : target;
    PrintWriter err = spec.commandLine().getErr();
    try {
      PlainCopy written = PlainCopy.write(source, copy, limits);
      written.notes().forEach(err::println);
      spec.commandLine()
          .getOut()
          .println(copy + ": formulas that became values: " + written.replaced());
      return written.notes().isEmpty() ? 0 : 1;
    } catch (FileAlreadyExistsException present) {
      err.println(copy + ": exists already and is not overwritten");
    } catch (UnreadableFileException unreadable) {
      err.println(source + ": " + unreadable.getMessage());
    } catch (IOException problem) {
      err.println(copy + ": cannot be written: " + Reason.of(problem));
    }
    return Main.FAILED;
  }

  private static Path beside(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.') < 1 ? name.length() : name.lastIndexOf('.');
    return file.resolveSibling(name.substring(0, dot) + "-plain" + name.substring(dot));
  }
}
