package tenthmark.checker.output;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tenthmark.checker.copy.AnnotatedCopy;
import tenthmark.checker.page.ClassPage;
import tenthmark.checker.page.StudentPage;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.JsonReport;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.TimeLimit;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.measurement.wording.Sentences;

/**
 * The folder that reports are written to: {@code workbooks/} with a folder for each workbook, laid
 * out as the workbooks themselves are, to be handed to its student as it is; and beside it what the
 * instructor gets about the class, {@code class.html}, {@code gradebook.csv}, {@code findings.json}
 * and {@code junit.xml}.
 */
public final class ReportFolder {

  private static final String WORKBOOKS = "workbooks";
  private static final String PAGE = "feedback.html";
  private static final String CLASS = "class.html";
  private static final String RESULTS = "results.jsonl";

  private final Path folder;
  private final CommonFolder root;
  private final FileChecker checker;
  private final Sentences texts;

  /**
   * @param folder is made if it does not exist
   * @param files all workbooks, by which the layout is found
   * @param checker by which they are checked
   * @param texts what the reports say, in one language
   */
  public ReportFolder(Path folder, List<Path> files, FileChecker checker, Sentences texts) {
    this.folder = folder.toAbsolutePath().normalize();
    this.root = CommonFolder.of(files);
    this.checker = checker;
    this.texts = texts;
  }

  /** Whether a file lies in the folder, so that it is a report and no student's workbook. */
  public static boolean holds(Path folder, Path file) {
    return real(file).startsWith(real(folder));
  }

  /** Whether a folder holds reports that were written earlier. */
  public static boolean isOne(Path folder) {
    return Files.isDirectory(folder.resolve(WORKBOOKS))
        && (Files.exists(folder.resolve(CLASS)) || Files.exists(folder.resolve(RESULTS)));
  }

  /** The file in a folder of reports that keeps the results for later checks. */
  public static Path results(Path folder) {
    return folder.resolve(RESULTS);
  }

  private static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException notThere) {
      return absolute(file);
    }
  }

  /**
   * Writes what the student gets about a workbook; may be called from several threads.
   *
   * @throws UnreadableFileException if no annotated copy can be made; the page is written all the
   *     same
   */
  public void write(FileReport report) throws IOException, UnreadableFileException {
    Path own = own(report.file());
    WholeFile.write(
        own.resolve(PAGE), StudentPage.of(report, checker.profile(), checker.rules(), texts));
    if (report.problem().isEmpty()) {
      WholeFile.write(own.resolve(report.name()), annotated(report));
    }
  }

  /** Writes what the instructor gets about all workbooks, given in their order. */
  public void writeClass(List<FileReport> reports) throws IOException {
    WholeFile.write(
        folder.resolve(CLASS),
        ClassPage.of(reports, checker.profile().course(), texts, this::name, this::link));
    WholeFile.write(folder.resolve("gradebook.csv"), Gradebook.write(reports, this::name));
    WholeFile.write(folder.resolve("findings.json"), JsonReport.write(reports, texts));
    WholeFile.write(
        folder.resolve("junit.xml"), TestReport.write(reports, rules(), texts, this::name));
  }

  /** The rules that the course applies. */
  private RuleCatalogue rules() {
    return checker.profile().grading().applied(checker.rules());
  }

  /** A workbook's path below the folder that all have in common. */
  private String name(Path file) {
    return root.relative(file).toString().replace('\\', '/');
  }

  /** From the class page to a workbook's own, with what a link cannot hold as it is encoded. */
  private String link(Path file) {
    try {
      String path = WORKBOOKS + "/" + name(file) + "/" + PAGE;
      return new URI(null, null, path, null).toASCIIString();
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** The copy is made within the same limits as the check: a file may cost no more twice. */
  private byte[] annotated(FileReport report) throws UnreadableFileException {
    return TimeLimit.within(
        checker.limits().time(), () -> AnnotatedCopy.of(report, texts, checker.limits()));
  }

  /** The folder for a workbook. */
  private Path own(Path file) {
    return folder.resolve(WORKBOOKS).resolve(root.relative(file));
  }

  private static Path absolute(Path file) {
    return file.toAbsolutePath().normalize();
  }
}
