package tenthmark.checker.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.profile.ProfileText;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Limits;
import tenthmark.measurement.wording.Message;

/** Students and numbers are invented. */
class EarlierResultsTest {

  private static final Basis BASIS = new Basis("tenthmark-checker 1", "none");

  @TempDir Path folder;

  private final FileChecker checker = FileChecker.load(Profile.NONE, Limits.DEFAULT);
  private final List<Path> checked = new ArrayList<>();
  private Path state;
  private Path ada;
  private Path ben;

  @BeforeEach
  void workbooks() {
    state = folder.resolve("state");
    ada = table("ada.xlsx", "mm");
    ben = table("ben.xlsx", null);
  }

  private Path table(String name, String unit) {
    return Grid.sheet("Records")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("Crank arm \"left\" ±", 172.5, unit, 0.5, "Fine marks, two ends.")
        .xlsx(folder.resolve(name));
  }

  private FileReport count(Path file) {
    checked.add(file);
    return checker.check(file);
  }

  private List<FileReport> run(Basis basis, boolean keep, Path... files) throws IOException {
    checked.clear();
    List<FileReport> reports = new ArrayList<>();
    try (EarlierResults earlier = EarlierResults.open(state, basis, RuleCatalogue.load(), keep)) {
      for (Path file : files) {
        FileReport report = earlier.report(file, file, () -> count(file));
        earlier.keep(file);
        reports.add(report);
      }
      assertThat(earlier.carriedOver()).isEqualTo(files.length - checked.size());
    }
    return reports;
  }

  @Nested
  class Unchanged {

    @Test
    void workbooksAreNotCheckedAgainAndTheirReportsAreTheSame() throws Exception {
      List<FileReport> first = run(BASIS, true, ada, ben);

      List<FileReport> second = run(BASIS, true, ada, ben);

      assertThat(checked).isEmpty();
      assertThat(second).isEqualTo(first);
      assertThat(second.get(1).findings()).isNotEmpty();
    }

    @Test
    void workbooksOfAnotherFolderStayKnown() throws Exception {
      run(BASIS, true, ada);
      run(BASIS, true, ben);

      run(BASIS, true, ada, ben);

      assertThat(checked).isEmpty();
    }

    @Test
    void workbooksAddNothingToTheFile() throws Exception {
      run(BASIS, true, ada, ben);
      byte[] before = Files.readAllBytes(state);

      run(BASIS, true, ben, ada);

      assertThat(state).hasBinaryContent(before);
    }

    @Test
    void workbooksAreKnownBesideADamagedLine() throws Exception {
      run(BASIS, true, ada);
      Files.writeString(state, "null\n{}\n[1]\n", StandardOpenOption.APPEND);
      run(BASIS, true, ben);

      run(BASIS, true, ada, ben);

      assertThat(checked).isEmpty();
    }
  }

  @Nested
  class CheckedAgain {

    @Test
    void isAWorkbookWithOtherContent() throws Exception {
      run(BASIS, true, ada, ben);
      table("ben.xlsx", "cm");

      List<FileReport> second = run(BASIS, true, ada, ben);

      assertThat(checked).containsExactly(ben);
      assertThat(second.get(1).findings()).isEmpty();
    }

    @Test
    void isEveryWorkbookUnderAnotherVersionOrProfile() throws Exception {
      run(BASIS, true, ada, ben);

      run(new Basis("tenthmark-checker 2", "none"), true, ada, ben);
      assertThat(checked).containsExactly(ada, ben);

      run(new Basis("tenthmark-checker 2", "0f1e"), true, ada, ben);
      assertThat(checked).containsExactly(ada, ben);
    }

    @Test
    void isEveryWorkbookIfEarlierResultsAreNotWanted() throws Exception {
      run(BASIS, true, ada, ben);

      run(BASIS, false, ada, ben);

      assertThat(checked).containsExactly(ada, ben);
    }

    @Test
    void isAWorkbookThatCouldNotBeChecked() throws Exception {
      Path damaged = Files.writeString(folder.resolve("cy.xlsx"), "no workbook");
      run(BASIS, true, damaged, folder.resolve("none.ods"));

      run(BASIS, true, damaged, folder.resolve("none.ods"));

      assertThat(checked).hasSize(2);
    }
  }

  @Nested
  class AStoppedBatch {

    @Test
    void goesOnWhereItStood() throws Exception {
      run(BASIS, true, ada);
      // What a program that is killed leaves behind.
      Files.writeString(state, "{\"sha256\":\"12", StandardOpenOption.APPEND);

      run(BASIS, true, ada, ben);
      assertThat(checked).containsExactly(ben);

      run(BASIS, true, ada, ben);
      assertThat(checked).isEmpty();
    }
  }

  @Nested
  class AResultThatCannotBeKept {

    /** A sentence within so many others cannot be written down, for the stack or its depth. */
    private FileReport unwritable(Path file) {
      Message deep = Message.verbatim("deep");
      for (int level = 0; level < 100_000; level++) {
        deep = Message.of("found", deep);
      }
      FileReport report = checker.check(ben);
      Finding finding = report.findings().get(0);
      return new FileReport(
          file,
          Optional.empty(),
          report.contents(),
          List.of(finding.rule().finding(finding.cell(), deep, finding.expected())));
    }

    @Test
    void isNamedAndTheOthersAreKept() throws Exception {
      try (EarlierResults earlier = EarlierResults.open(state, BASIS, RuleCatalogue.load(), true)) {
        earlier.report(ada, ada, () -> unwritable(ada));
        earlier.keep(ada);
        earlier.report(ben, ben, () -> checker.check(ben));
        earlier.keep(ben);

        assertThat(earlier.unkept()).containsOnlyKeys(ada);
      }

      run(BASIS, true, ada, ben);
      assertThat(checked).containsExactly(ada);
    }
  }

  @Nested
  class TheFile {

    @Test
    void belongsToOneCheckAtATime() throws Exception {
      EarlierResults one = EarlierResults.open(state, BASIS, RuleCatalogue.load(), true);
      try (one) {
        assertThatThrownBy(() -> run(BASIS, true, ada))
            .isInstanceOf(IOException.class)
            .hasMessageStartingWith("another check keeps its results there");
      }

      run(BASIS, true, ada);

      assertThat(checked).containsExactly(ada);
    }
  }

  @Nested
  class OtherFiles {

    @Test
    void areNotOverwritten() throws Exception {
      for (String content : List.of("convention: {wide: 0.1}\n", "{\"files\": []}\n", "null\n")) {
        Files.writeString(state, content);

        assertThatThrownBy(() -> run(BASIS, true, ada))
            .isInstanceOf(IOException.class)
            .hasMessage("it is a file of another kind and is left as it is");
        assertThat(state).hasContent(content.strip());
      }
    }

    @Test
    void areNotOverwrittenWhenTheyAreWorkbooks() throws Exception {
      byte[] before = Files.readAllBytes(ada);
      state = ada;

      assertThatThrownBy(() -> run(BASIS, true, ben)).isInstanceOf(IOException.class);

      assertThat(ada).hasBinaryContent(before);
    }
  }

  @Nested
  class TheBasis {

    private Basis of(String profile) {
      ProfileText read = new ProfileReader(RuleCatalogue.load().ids()).read(profile);
      return Basis.of("1", ((ProfileText.Usable) read).profile().course());
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "rules: {unit-missing: {severity: note, points: 2}}",
          "rules: {unit-missing: {severity: none}}",
          "submissions: folder-per-student",
          "roster: {id: Number}",
          "grades: {maximum: 10}",
          "language: de",
          "# nothing but a remark"
        })
    void staysWithWhatIsAppliedToFindings(String profile) {
      assertThat(of(profile)).isEqualTo(of(""));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "convention: standard",
          "convention: {name: ours, wide: 0.5}",
          "apparatus: [{name: steel rule, division: 1, unit: mm}]",
          "quantities: [{name: Crank arm, unit: mm}]",
          "headings: {uncertainty: [incertezza]}",
          "tables: [{sheet: Bench, range: 'A2:C4', roles: {B: value}}]"
        })
    void changesWithWhatTheCourseExpects(String profile) {
      assertThat(of(profile)).isNotEqualTo(of("")).isEqualTo(of(profile));
    }
  }

  @Test
  void aFileIsToldByItsCheckSum() throws Exception {
    // FIPS 180-4, published example: SHA-256 of "abc" (from memory).
    assertThat(Basis.sha256(Files.writeString(folder.resolve("abc"), "abc")))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }
}
