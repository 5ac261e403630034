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
import tenthmark.checker.report.Unwritten;
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
  private static final String GRADEBOOK = "gradebook.csv";
  private static final String FINDINGS = "findings.json";
  private static final String TESTS = "junit.xml";
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
   * Writes what the student gets about a workbook, each report whatever becomes of the others; may
   * be called from several threads. Without its annotated copy a check is complete: there are files
   * that can be read and not be copied.
   *
   * @return those that could not be written
   */
  public List<Unwritten> write(FileReport report) {
    Path own = own(report.file());
    Writing writing = new Writing();
    writing.text(
        "its page",
        own.resolve(PAGE),
        () -> StudentPage.of(report, checker.profile(), checker.rules(), texts));
    Path copy = own.resolve(report.name());
    if (report.problem().isEmpty()) {
      writing.copy("its annotated copy", copy, () -> annotated(report));
    } else {
      writing.none("its annotated copy", copy);
    }
    return writing.unwritten();
  }

  /**
   * Writes what the instructor gets about all workbooks, given in their order, each report whatever
   * becomes of the others.
   *
   * @return those that could not be written
   */
  public List<Unwritten> writeClass(List<FileReport> reports) {
    Writing writing = new Writing();
    writing.text(
        CLASS,
        folder.resolve(CLASS),
        () -> ClassPage.of(reports, checker.profile().course(), texts, this::name, this::link));
    writing.text(GRADEBOOK, folder.resolve(GRADEBOOK), () -> Gradebook.write(reports, this::name));
    writing.text(FINDINGS, folder.resolve(FINDINGS), () -> JsonReport.write(reports, texts));
    writing.text(
        TESTS, folder.resolve(TESTS), () -> TestReport.write(reports, rules(), texts, this::name));
    return writing.unwritten();
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
