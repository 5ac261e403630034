package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.ZipFile;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.submission.Zip;
import tenthmark.checker.workbook.Grid;

/**
 * A term of six sections and three labs by the command line alone, at most six commands a lab: what
 * each student does is planned here, and so is the grade. Students and numbers are invented.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TermTest {

  private static final int SECTIONS = 6;
  private static final int MOST_COMMANDS = 6;
  private static final String REASON = "Fine marks, both ends judged by eye.";

  private static final String COMMON =
      """
      convention: {name: halves, wide: 0.5, fine: 0.5}
      submissions: underscore-separated
      roster: {id: Number, name: [First, Last], section: Group}
      grades:
        maximum: 10
        columns: {Number: id, Name: name, Score: score, Note: status}
      rules:
        rationale-missing: {points: 0.5}
      """;

  /** What a student of a section does; each section has one of each. */
  private enum Plan {
    FAULTLESS("10", "10"),
    NO_UNIT("9", "8"),
    NO_REASON("9.5", "9.5"),
    /** Without unit at first, mended in a second attempt. */
    MENDED("10", "10"),
    ABSENT("", ""),
    PHOTOGRAPH("", ""),
    /** Has the numbers of the section before. */
    COPIED("10", "10"),
    /** A point less, by a remark. */
    LATE("9", "9");

    private final String score;
    private final String stricter;

    Plan(String score, String stricter) {
      this.score = score;
      this.stricter = stricter;
    }

    private int place() {
      return List.of(values()).indexOf(this);
    }
  }

  private record Student(int section, Plan plan) {

    String id() {
      return Integer.toString(10_000 + 100 * section + plan.place());
    }

    String last() {
      return "Last" + id();
    }

    String group() {
      return "Group " + section;
    }

    String file(int lab, String time, String ending) {
      return last() + "_First_" + id() + "_attempt_" + time + "_Lab " + lab + "." + ending;
    }
  }

  private static List<Student> students() {
    List<Student> students = new ArrayList<>();
    for (int section = 1; section <= SECTIONS; section++) {
      for (Plan plan : Plan.values()) {
        students.add(new Student(section, plan));
      }
    }
    return students;
  }

  @TempDir static Path folder;

  private final StringWriter said = new StringWriter();
  private final Map<Integer, Integer> commands = new LinkedHashMap<>();
  private final Map<Integer, String> regraded = new LinkedHashMap<>();

  private String run(int lab, Object... arguments) {
    commands.merge(lab, 1, Integer::sum);
    StringWriter one = new StringWriter();
    int status = CommandLines.run(new PrintWriter(one, true), arguments);
    said.append(one.toString());
    assertThat(status).as(one.toString()).isIn(0, 1);
    return one.toString();
  }

  @BeforeAll
  void aTerm() throws Exception {
    Files.writeString(folder.resolve("course.yaml"), COMMON);
    Files.writeString(
        folder.resolve("roster.csv"),
        "Number,Last,First,Group\n"
            + students().stream()
                .map(one -> "%s,%s,First,%s\n".formatted(one.id(), one.last(), one.group()))
                .collect(Collectors.joining()));
    for (int lab = 1; lab <= 3; lab++) {
      aLab(lab);
    }
  }

  private void aLab(int lab) throws Exception {
    Path profile = profile(lab, 1);
    Path prepared = prepared(lab);
    run(
        lab,
        "profile",
        "hand-out",
        prepared,
        "--profile",
        profile,
        "--out",
        folder.resolve("for-students-" + lab + ".xlsx"));
    handIn(lab);
    check(lab);
    Files.writeString(
        folder.resolve("remarks-" + lab + ".csv"),
        "student,rule,cell,points,because\n"
            + students().stream()
                .filter(one -> one.plan() == Plan.LATE)
                .map(one -> one.id() + ",,,1,Two days late.\n")
                .collect(Collectors.joining()));
    check(lab, "--remarks", folder.resolve("remarks-" + lab + ".csv"), "--changed-only");
    run(
        lab,
        "check",
        folder.resolve("lab-" + lab).resolve("Group 6.zip"),
        "--profile",
        profile,
        "--roster",
        folder.resolve("roster.csv"),
        "--language",
        "de",
        "--out",
        folder.resolve("berichte-" + lab),
        "--quiet");
    Files.copy(
        folder.resolve("reports-" + lab).resolve("grades.csv"),
        folder.resolve("grades-" + lab + ".csv"));
    profile(lab, 2);
    regraded.put(
        lab, check(lab, "--remarks", folder.resolve("remarks-" + lab + ".csv"), "--changed-only"));
  }

  private String check(int lab, Object... more) {
    List<Object> arguments =
        new ArrayList<>(
            List.of(
                "check",
                folder.resolve("lab-" + lab),
                "--profile",
                folder.resolve("lab-" + lab + ".yaml"),
                "--roster",
                folder.resolve("roster.csv"),
                "--out",
                folder.resolve("reports-" + lab),
                "--quiet"));
    arguments.addAll(List.of(more));
    return run(lab, arguments.toArray());
  }

  private Path profile(int lab, int points) throws IOException {
    return Files.writeString(
        folder.resolve("lab-" + lab + ".yaml"),
        """
        include: course.yaml
        course: Bicycle workshop, lab %d
        rules:
          unit-missing: {points: %d}
        """
            .formatted(lab, points));
  }

  private Path prepared(int lab) {
    return table(lab, IntStream.range(0, 12).mapToObj(row -> new Object[] {null, null}).toList())
        .xlsx(folder.resolve("prepared-" + lab + ".xlsx"));
  }

  private static Grid table(int lab, List<Object[]> values) {
    Grid grid =
        Grid.sheet("Bench").row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale");
    for (int row = 0; row < values.size(); row++) {
      Object[] value = values.get(row);
      grid.row(
          "Spoke " + (row + 1) + " of wheel " + lab,
          "s" + (row + 1),
          value[0],
          row == 3 && value.length > 2 ? value[2] : "mm",
          value[1],
          row == 5 && value.length > 3 ? value[3] : value[0] == null ? null : REASON);
    }
    return grid;
  }

  /** Lengths of spokes to a tenth of a millimetre, of nobody else unless they were copied. */
  private static List<Object[]> values(int lab, Student student, Object unit, Object reason) {
    int section = student.plan() == Plan.COPIED ? (student.section() + 1) / 2 : student.section();
    Random random = new Random(1_000_003L * lab + 1_009L * section + 13L * student.plan().place());
    List<Object[]> values = new ArrayList<>();
    for (int row = 0; row < 12; row++) {
      values.add(new Object[] {2000 + random.nextInt(80_000) / 100 + 0.5, 0.5, unit, reason});
    }
    return values;
  }

  private byte[] workbook(int lab, Student student, Object unit, Object reason) throws IOException {
    Path file = folder.resolve("one.xlsx");
    table(lab, values(lab, student, unit, reason)).xlsx(file);
    byte[] content = Files.readAllBytes(file);
    Files.delete(file);
    return content;
  }

  /** A zip for each section, as a learning-management system gives it. */
  private void handIn(int lab) throws IOException {
    Path zips = Files.createDirectory(folder.resolve("lab-" + lab));
    for (int section = 1; section <= SECTIONS; section++) {
      Zip zip = new Zip();
      for (Plan plan : Plan.values()) {
        handIn(zip, lab, new Student(section, plan));
      }
      zip.write(zips.resolve("Group " + section + ".zip"));
    }
  }

  private void handIn(Zip zip, int lab, Student student) throws IOException {
    String early = student.file(lab, "2026-09-1" + lab + "-10-33-05", "xlsx");
    String late = student.file(lab, "2026-09-2" + lab + "-10-33-05", "xlsx");
    switch (student.plan()) {
      case FAULTLESS, COPIED -> zip.with(early, workbook(lab, student, "mm", REASON));
      case NO_UNIT -> zip.with(early, workbook(lab, student, null, REASON));
      case NO_REASON -> zip.with(early, workbook(lab, student, "mm", null));
      case MENDED ->
          zip.with(early, workbook(lab, student, null, REASON))
              .with(late, workbook(lab, student, "mm", REASON));
      case LATE -> zip.with(late, workbook(lab, student, "mm", REASON));
      case PHOTOGRAPH ->
          zip.with(student.file(lab, "2026-09-1" + lab + "-09-00-00", "pdf"), "a photograph");
      case ABSENT -> {}
    }
  }

  private static Map<String, String> scores(Path grades) throws IOException {
    Pattern row = Pattern.compile("\"(\\d+)\",\"[^\"]*\",\"([^\"]*)\",\"[^\"]*\"");
    return Files.readAllLines(grades).stream()
        .map(row::matcher)
        .filter(matcher -> matcher.matches())
        .collect(Collectors.toMap(matcher -> matcher.group(1), matcher -> matcher.group(2)));
  }

  private static Document page(Path file) throws IOException {
    return Jsoup.parse(Files.readString(file, StandardCharsets.UTF_8));
  }

  @Test
  void takesAtMostSixCommandsALab() {
    assertThat(commands.values()).hasSize(3).allMatch(count -> count <= MOST_COMMANDS);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void gradesEachStudentAsPlanned(int lab) throws IOException {
    assertThat(scores(folder.resolve("grades-" + lab + ".csv")))
        .isEqualTo(
            students().stream().collect(Collectors.toMap(Student::id, one -> one.plan().score)));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void gradesAnewByAChangedProfileWithoutReadingAWorkbookAgain(int lab) throws IOException {
    assertThat(scores(folder.resolve("reports-" + lab).resolve("grades.csv")))
        .isEqualTo(
            students().stream().collect(Collectors.toMap(Student::id, one -> one.plan().stricter)));
    int files = SECTIONS * 7;
    assertThat(regraded.get(lab)).contains(files + " unchanged since the last check");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void namesWhoIsMissingAndWhatWasSentInstead(int lab) throws IOException {
    Document page = page(folder.resolve("reports-" + lab).resolve("students.html"));

    for (Student one : students()) {
      String missing = page.select("#missing").text();
      switch (one.plan()) {
        case ABSENT -> assertThat(missing).contains(one.last());
        case PHOTOGRAPH -> assertThat(missing).containsPattern(one.last() + "[^;]*\\.pdf");
        default -> assertThat(missing).doesNotContain(one.last());
      }
    }
  }

  /** Two sections each have the numbers of one: three pairs, and own attempts are none. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void findsCopiesAcrossSectionsAndNoOthers(int lab) throws IOException {
    Document page = page(folder.resolve("reports-" + lab).resolve("class.html"));

    List<String> pairs = page.select("#shared tbody tr").eachText();

    assertThat(pairs).hasSize(3);
    for (int first = 1; first <= SECTIONS; first += 2) {
      String one = new Student(first, Plan.COPIED).id();
      String other = new Student(first + 1, Plan.COPIED).id();
      assertThat(pairs).anyMatch(pair -> pair.contains(one) && pair.contains(other));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void tellsAStudentWhatIsMendedAndWhatTheInstructorSays(int lab) throws IOException {
    Student mended = new Student(2, Plan.MENDED);
    Student late = new Student(2, Plan.LATE);

    assertThat(feedback(lab, mended).select("#grade").text()).contains("unit-missing");
    assertThat(feedback(lab, late).select("#grade").text()).contains("Two days late.");
  }

  private Document feedback(int lab, Student student) throws IOException {
    return page(
        folder
            .resolve("reports-" + lab)
            .resolve("workbooks")
            .resolve("Group " + student.section() + ".zip")
            .resolve(student.file(lab, "2026-09-2" + lab + "-10-33-05", "xlsx"))
            .resolve("feedback.html"));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void hasAnArchiveForEachSection(int lab) throws IOException {
    for (int section = 1; section <= SECTIONS; section++) {
      Path archive =
          folder.resolve("reports-" + lab).resolve("sections").resolve("Group " + section + ".zip");
      try (ZipFile zip = new ZipFile(archive.toFile())) {
        assertThat(zip.size()).isEqualTo(2 * 6);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void speaksGermanToTheSectionOfTheSecondInstructor(int lab) throws IOException {
    Document page = page(folder.resolve("berichte-" + lab).resolve("students.html"));

    assertThat(page.select("html").attr("lang")).isEqualTo("de");
    assertThat(page.select("footer").text()).contains("Geprüft am", "lab-" + lab + ".yaml");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void keepsEachProfileByWhichItGraded(int lab) throws IOException {
    try (var kept = Files.list(folder.resolve("reports-" + lab).resolve("kept"))) {
      assertThat(
              kept.map(place -> place.getFileName().toString())
                  .filter(name -> name.startsWith("lab-" + lab + ".yaml")))
          .hasSize(2);
    }
  }
}
