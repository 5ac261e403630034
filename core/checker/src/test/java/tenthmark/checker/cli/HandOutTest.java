package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.profile.ProfileText;
import tenthmark.checker.reading.InsideProfile;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.recording.Convention;

/** What students get of a prepared workbook, by the command line. The course is invented. */
class HandOutTest {

  private static final String PROFILE =
      """
      include: common.yaml
      course: Bicycle workshop, lab 2
      quantities:
        - name: Spoke, length
          symbol: s
          unit: mm
          accepted: 264.5
          uncertainty: 0.25
          gap: 2
          apparatus: steel rule
      rules:
        unit-missing: {severity: warning, points: 1.5}
      roster: {id: Number}
      grades: {maximum: 20}
      """;

  private static final String COMMON =
      """
      convention: {name: halves, wide: 0.5, fine: 0.5}
      apparatus:
        - {name: steel rule, division: 1, unit: mm, spacing: fine}
      """;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private Path profile;

  @BeforeEach
  void write() throws IOException {
    profile = Files.writeString(folder.resolve("lab-2.yaml"), PROFILE);
    Files.writeString(folder.resolve("common.yaml"), COMMON);
  }

  private int run(Object... arguments) {
    return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
  }

  /** The prepared workbooks of our own lab 2, in both formats. */
  private static Path prepared(String ending) {
    return Path.of("../../sample-workbooks/workbooks/labs/lab-2-soft-ends-start" + ending);
  }

  private Path handOut(String ending) {
    Path copy = folder.resolve("for students" + ending);
    assertThat(run("profile", "hand-out", prepared(ending), "--profile", profile, "--out", copy))
        .as(err.toString())
        .isZero();
    return copy;
  }

  private static Evaluation evaluation(Path file) throws Exception {
    return Evaluation.of(WorkbookFile.read(file), Catalogue.load());
  }

  @ParameterizedTest
  @ValueSource(strings = {".ods", ".xlsx"})
  void holdsTheConventionThatItsFunctionsFollow(String ending) throws Exception {
    Evaluation evaluation = evaluation(handOut(ending));

    Convention convention = evaluation.convention();
    assertThat(convention.name()).isEqualTo("halves");
    assertThat(convention.fineFraction()).isEqualTo(0.5);
    assertThat(convention.reactionSeconds()).isEqualTo(0.2);
  }

  @ParameterizedTest
  @ValueSource(strings = {".ods", ".xlsx"})
  void holdsTheProfileWithoutAcceptedValuesAndPoints(String ending) throws Exception {
    Path copy = handOut(ending);

    String text = InsideProfile.of(WorkbookFile.read(copy), evaluation(copy)).orElseThrow();

    assertThat(text)
        .contains("Spoke, length", "steel rule", "halves", "Bicycle workshop, lab 2", "warning")
        .doesNotContain("264.5", "0.25", "gap", "1.5", "Number", "20", "include");
  }

  @ParameterizedTest
  @ValueSource(strings = {".ods", ".xlsx"})
  void keepsEveryCellOfThePreparedWorkbook(String ending) throws Exception {
    Workbook before = WorkbookFile.read(prepared(ending));
    Workbook after = WorkbookFile.read(handOut(ending));

    assertThat(after.sheets()).hasSize(before.sheets().size() + 1);
    before
        .sheets()
        .forEach(
            sheet ->
                sheet
                    .cells()
                    .forEach(
                        cell -> {
                          Optional<Content> kept =
                              after.at(cell.address()).map(same -> same.content());
                          assertThat(kept.map(HandOutTest::typed))
                              .as(cell.address().toString())
                              .contains(typed(cell.content()));
                        }));
  }

  private static Object typed(Content content) {
    return content instanceof Content.Formula formula ? formula.text() : content;
  }

  @Test
  void isCheckedByTheProfileInside() throws Exception {
    Path copy = handOut(".xlsx");

    run("check", copy);

    assertThat(out.toString()).contains("quantity-missing", "Spoke, length");
    assertThat(out.toString()).doesNotContain("not-read");
  }

  @Test
  void refusesAProfileInsideThatCannotBeUsed() throws Exception {
    Path file =
        Grid.sheet("Course")
            .row("colour: red")
            .name(InsideProfile.NAME, "Course!$A$1")
            .xlsx(folder.resolve("changed.xlsx"));

    assertThat(run("check", file)).isEqualTo(2);

    assertThat(out + err.toString())
        .contains("the profile that it holds cannot be used: LAB_PROFILE:1:1: colour is no key");
  }

  @Nested
  class Refuses {

    @Test
    void aSecondCourseInOneWorkbook() {
      Path copy = handOut(".ods");

      assertThat(
              run(
                  "profile",
                  "hand-out",
                  copy,
                  "--profile",
                  profile,
                  "--out",
                  folder.resolve("again.ods")))
          .isEqualTo(2);
      assertThat(err.toString()).contains("it holds LAB_CONVENTION already");
    }

    @Test
    void toOverwrite() {
      handOut(".ods");

      assertThat(
              run(
                  "profile",
                  "hand-out",
                  prepared(".ods"),
                  "--profile",
                  profile,
                  "--out",
                  folder.resolve("for students.ods")))
          .isEqualTo(2);
      assertThat(err.toString()).contains("exists already and is not overwritten");
    }

    @Test
    void aProfileWithAMistake() throws IOException {
      Files.writeString(profile, "colour: red");

      assertThat(
              run(
                  "profile",
                  "hand-out",
                  prepared(".ods"),
                  "--profile",
                  profile,
                  "--out",
                  folder.resolve("b.ods")))
          .isEqualTo(2);
      assertThat(err.toString()).contains("colour is no key here");
    }
  }

  /** Every convention that a profile can say comes back as it was. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "bench",
        "standard",
        "{digits: particle-data}",
        "{digits: 1, combine: quadrature, reaction: 0.35, coverage: 2}"
      })
  void saysEachChoiceOfTheConvention(String convention) throws Exception {
    Files.writeString(profile, "convention: " + convention);
    Convention own =
        ((ProfileText.Usable) new ProfileReader(Set.of()).read(profile))
            .profile()
            .course()
            .convention();

    assertThat(evaluation(handOut(".ods")).convention()).isEqualTo(own);
  }
}
