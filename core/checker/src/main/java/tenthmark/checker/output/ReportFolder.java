package tenthmark.checker.output;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.copy.AnnotatedCopy;
import tenthmark.checker.grade.Grade;
import tenthmark.checker.grade.GradeTable;
import tenthmark.checker.grade.GradeTableColumns;
import tenthmark.checker.page.ClassPage;
import tenthmark.checker.page.Feedback;
import tenthmark.checker.page.StudentPage;
import tenthmark.checker.page.StudentsPage;
import tenthmark.checker.remark.Remark;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Fingerprint;
import tenthmark.checker.report.JsonReport;
import tenthmark.checker.report.LeftOut;
import tenthmark.checker.report.Program;
import tenthmark.checker.report.Provenance;
import tenthmark.checker.report.Unwritten;
import tenthmark.checker.roster.Register;
import tenthmark.checker.rules.Grading;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RulePolicy;
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
  private static final String STUDENTS = "students.html";
  private static final String GRADES = "grades.csv";
  private static final String SECTIONS = "sections";
  private static final String RESULTS = "results.jsonl";
  private static final String GONE = "gone";

  private final Path folder;
  private final CommonFolder root;
  private final FileChecker checker;
  private final Sentences texts;
  private final Optional<Provenance> provenance;
  private final Optional<WrittenReports> written;

  /**
   * @param folder is made if it does not exist
   * @param files all workbooks, by which the layout is found
   * @param checker by which they are checked
   * @param texts what the reports say, in one language
   */
  public ReportFolder(Path folder, List<Path> files, FileChecker checker, Sentences texts) {
    this(folder, files, checker, texts, Optional.empty(), Optional.empty());
  }

  /**
   * The same for reports that say by what and when they were checked.
   *
   * @param written which reports lie there from earlier checks
   */
  public ReportFolder(
      Path folder,
      List<Path> files,
      FileChecker checker,
      Sentences texts,
      Optional<Provenance> provenance,
      Optional<WrittenReports> written) {
    this.provenance = provenance;
    this.written = written;
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
    return FolderLock.isMarked(folder);
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

  /** Writes what the student gets about a workbook that lies where it is called. */
  public List<Unwritten> write(FileReport report) {
    return write(report, report.file(), Optional.empty(), true);
  }

  /**
   * Writes what the student gets about a workbook, each report whatever becomes of the others; may
   * be called from several threads. Without its annotated copy a check is complete: there are files
   * that can be read and not be copied.
   *
   * @param original the file that holds the workbook
   * @param source the fingerprint of the workbook and of all that its findings rest on, if known:
   *     of the same source nothing is written that is there already
   * @param page whether its page is written now, and not with its grade
   * @return those that could not be written
   */
  public List<Unwritten> write(
      FileReport report, Path original, Optional<String> source, boolean page) {
    Writing writing = new Writing();
    if (page) {
      writePage(writing, report, source, Optional.empty());
    }
    Path copy = own(report.file()).resolve(report.name());
    if (report.problem().isPresent()) {
      writing.none("its annotated copy", copy);
      return writing.unwritten();
    }
    Optional<String> inputs =
        source.map(
            same ->
                Fingerprint.of(
                    same,
                    texts.language(),
                    grading(report),
                    provenance.flatMap(Provenance::profile)));
    if (!isThere(copy, inputs)
        && writing.copy("its annotated copy", copy, () -> annotated(report, original))) {
      note(writing, copy, report.file(), inputs);
    }
    return writing.unwritten();
  }

  /** What the course makes of the rules that found something. */
  private Map<String, RulePolicy> grading(FileReport report) {
    Grading grading = checker.profile().grading();
    return report.findings().stream()
        .map(finding -> finding.rule().id())
        .distinct()
        .collect(Collectors.toMap(Function.identity(), grading::policy));
  }

  private void writePage(
      Writing writing, FileReport report, Optional<String> source, Optional<Grade> grade) {
    Path page = own(report.file()).resolve(PAGE);
    Optional<String> inputs =
        inputs(
            writing,
            source,
            same -> Fingerprint.of(same, ofCourse(), grade.map(ReportFolder::shown)));
    if (isThere(page, inputs)) {
      return;
    }
    Feedback feedback = new Feedback(provenance, grade);
    if (writing.text(
        "its page",
        page,
        () -> StudentPage.of(report, checker.profile(), checker.rules(), feedback, texts))) {
      note(writing, page, report.file(), inputs);
    }
  }

  /** All of a grade but the report on the workbook that counts, of which its file says which. */
  private static List<Object> shown(Grade grade) {
    return List.of(
        grade.participant(),
        grade.status(),
        grade.reason(),
        grade.report().map(FileReport::file),
        grade.deductions(),
        grade.stale(),
        grade.maximum(),
        grade.comparison());
  }

  /** Without a fingerprint a report is written anew each time. */
  private static Optional<String> inputs(
      Writing writing, Optional<String> source, UnaryOperator<String> fingerprint) {
    List<String> inputs = new ArrayList<>();
    source.ifPresent(
        same -> writing.attempt("the list of reports", () -> inputs.add(fingerprint.apply(same))));
    return inputs.stream().findFirst();
  }

  private boolean isThere(Path report, Optional<String> inputs) {
    try {
      return written.isPresent()
          && inputs.isPresent()
          && written.get().isThere(report, inputs.get());
    } catch (IOException unknown) {
      return false;
    }
  }

  private void note(Writing writing, Path report, Path submission, Optional<String> inputs) {
    if (written.isPresent()) {
      writing.attempt(
          "the list of reports",
          () -> written.get().written(report, absolute(submission), inputs.orElse("")));
    }
  }

  /**
   * Writes what the students' newest workbooks give: the grade on each student's page, and for the
   * instructor a page about the students, the table of grades and an archive for each section.
   *
   * @param reports on all workbooks
   * @param sources the fingerprint of each workbook and of all that its findings rest on
   * @param unmatched remarks on students whom nobody is
   * @return what could not be written
   */
  public List<Unwritten> writeGrades(
      List<FileReport> reports,
      Function<Path, Optional<String>> sources,
      List<Grade> grades,
      List<Remark> unmatched) {
    Map<Path, Grade> bySubmission = new HashMap<>();
    for (Grade grade : grades) {
      grade.participant().attempts().forEach(attempt -> bySubmission.put(attempt.file(), grade));
    }
    Writing writing = new Writing();
    for (FileReport report : reports) {
      writePage(
          writing,
          report,
          sources.apply(report.file()),
          Optional.ofNullable(bySubmission.get(report.file())));
    }
    String course = checker.profile().course().name();
    Optional<String> inputs =
        inputs(
            writing,
            Optional.of(""),
            same ->
                Fingerprint.of(
                    grades.stream().map(ReportFolder::shown).toList(),
                    unmatched,
                    List.copyOf(checker.profile().administration().grades().columns().entrySet()),
                    ofCourse()));
    ofClass(
        writing,
        STUDENTS,
        inputs,
        () -> StudentsPage.of(course, grades, unmatched, provenance, texts, this::link));
    GradeTableColumns columns = checker.profile().administration().grades();
    ofClass(writing, GRADES, inputs, () -> GradeTable.write(grades, columns));
    SectionArchive.of(grades).forEach(archive -> write(archive, writing));
    return writing.unwritten();
  }

  private void write(SectionArchive archive, Writing writing) {
    String name = SECTIONS + "/" + archive.name();
    Path file = folder.resolve(SECTIONS).resolve(archive.name());
    Optional<String> inputs =
        written.flatMap(
            reports ->
                inputs(
                    writing,
                    Optional.of(""),
                    same ->
                        Fingerprint.of(
                            archive.reports().stream()
                                .map(this::ownFiles)
                                .map(files -> reports.traces(files.values()))
                                .toList())));
    if (!isThere(file, inputs)
        && writing.bytes(name, file, () -> archive.content(this::ownFiles))) {
      note(writing, file, folder, inputs);
    }
  }

  /** What a student gets, by the name that each file has in an archive. */
  private Map<String, Path> ownFiles(FileReport report) {
    String name = SectionArchive.name(report.file());
    Map<String, Path> files = new LinkedHashMap<>();
    files.put(name, own(report.file()).resolve(report.name()));
    files.put(name + ".html", own(report.file()).resolve(PAGE));
    return files;
  }

  /** Writes what the instructor gets about workbooks of which nothing tells whose they are. */
  public List<Unwritten> writeClass(List<FileReport> reports) {
    return writeClass(reports, file -> Optional.empty(), Register.NONE, LeftOut.NOTHING);
  }

  /**
   * Writes what the instructor gets about all workbooks, given in their order, each report whatever
   * becomes of the others. The page is about the newest workbook of each student alone.
   *
   * @param sources the fingerprint of each workbook and of all that its findings rest on
   * @param register who handed them in
   * @param leftOut what lay among them and was not checked
   * @return those that could not be written
   */
  public List<Unwritten> writeClass(
      List<FileReport> reports,
      Function<Path, Optional<String>> sources,
      Register register,
      LeftOut leftOut) {
    List<FileReport> newest =
        reports.stream().filter(report -> !register.isSuperseded(report.file())).toList();
    Writing writing = new Writing();
    Optional<String> inputs =
        inputs(
            writing,
            Optional.of(""),
            same -> Fingerprint.of(known(reports, sources), register, leftOut, ofCourse()));
    ofClass(
        writing,
        CLASS,
        inputs,
        () ->
            ClassPage.of(
                newest,
                leftOut,
                checker.profile().course(),
                register,
                provenance,
                texts,
                this::name,
                this::link));
    ofClass(writing, GRADEBOOK, inputs, () -> Gradebook.write(reports, this::name));
    ofClass(writing, FINDINGS, inputs, () -> JsonReport.write(reports, leftOut, texts));
    ofClass(writing, TESTS, inputs, () -> TestReport.write(reports, rules(), texts, this::name));
    return writing.unwritten();
  }

  /** What each report was made of; of a workbook that could not be checked, why not. */
  private static List<Object> known(
      List<FileReport> reports, Function<Path, Optional<String>> sources) {
    return reports.stream()
        .<Object>map(
            report ->
                List.of(
                    report.file(),
                    sources
                        .apply(report.file())
                        .or(report::problem)
                        .orElseGet(() -> UUID.randomUUID().toString())))
        .toList();
  }

  /** All that a course and a command line make of findings. */
  private List<Object> ofCourse() {
    return List.of(
        Program.stamp(),
        root.path(),
        texts.language(),
        checker.profile().grading(),
        checker.profile().course().name(),
        provenance.map(Provenance::files));
  }

  private void ofClass(
      Writing writing, String name, Optional<String> inputs, Callable<String> report) {
    Path file = folder.resolve(name);
    if (!isThere(file, inputs) && writing.text(name, file, report)) {
      note(writing, file, folder, inputs);
    }
  }

  /**
   * Takes reports of earlier checks away whose workbook is gone, into a folder of their own, for
   * nobody could make them anew, and those that lie where a workbook has no reports any more. Only
   * what this program wrote and nobody changed is touched.
   *
   * @param files all that were checked now
   * @return what was taken away, in a line each, and what could not be
   */
  public Tidied tidy(Set<Path> files) {
    Writing writing = new Writing();
    List<String> gone = new ArrayList<>();
    Set<Path> checked = files.stream().map(ReportFolder::absolute).collect(Collectors.toSet());
    for (WrittenReports.Entry left : written.map(WrittenReports::left).orElse(List.of())) {
      Path report = left.file();
      if (checked.contains(left.workbook()) || left.workbook().equals(folder)) {
        writing.attempt(report + ", which is of an earlier check,", () -> remove(report));
      } else if (isGone(left.workbook(), checked)) {
        writing.attempt(
            report + ", whose workbook is gone,",
            () -> {
              gone.add(left.workbook() + ": is gone; its report is now " + moved(report));
            });
      } else {
        writing.attempt("the list of reports", () -> written.get().keep(left));
      }
    }
    return new Tidied(gone, writing.unwritten());
  }

  /** Of a workbook in an archive only an archive that was read now tells whether it is there. */
  private static boolean isGone(Path workbook, Set<Path> checked) {
    if (Files.exists(workbook)) {
      return false;
    }
    for (Path step = workbook.getParent(); step != null; step = step.getParent()) {
      if (Files.isRegularFile(step)) {
        Path archive = step;
        return checked.stream().anyMatch(file -> file.startsWith(archive));
      }
    }
    return true;
  }

  private Path moved(Path report) throws IOException {
    Path place = folder.resolve(GONE).resolve(folder.resolve(WORKBOOKS).relativize(report));
    Files.createDirectories(place.getParent());
    Files.move(report, place, StandardCopyOption.REPLACE_EXISTING);
    removeEmpty(report.getParent());
    return place;
  }

  private void remove(Path report) throws IOException {
    Files.deleteIfExists(report);
    removeEmpty(report.getParent());
  }

  private void removeEmpty(Path inner) throws IOException {
    for (Path step = inner;
        step.startsWith(folder) && !step.equals(folder) && isEmpty(step);
        step = step.getParent()) {
      Files.delete(step);
    }
  }

  private static boolean isEmpty(Path inner) throws IOException {
    try (Stream<Path> content = Files.list(inner)) {
      return content.findAny().isEmpty();
    }
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
  private byte[] annotated(FileReport report, Path original) throws UnreadableFileException {
    return TimeLimit.within(
        checker.limits().time(),
        () -> AnnotatedCopy.of(report, original, provenance, texts, checker.limits()));
  }

  /** The folder for a workbook. */
  private Path own(Path file) {
    return folder.resolve(WORKBOOKS).resolve(root.relative(file));
  }

  private static Path absolute(Path file) {
    return file.toAbsolutePath().normalize();
  }
}
