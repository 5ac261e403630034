package tenthmark.checker.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Limits;

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
        earlier.keep(report);
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
    void resultsMakeTheSameFileWhateverTheirOrder() throws Exception {
      run(BASIS, true, ada, ben);
      String one = Files.readString(state);
      run(BASIS, false, ben, ada);

      assertThat(state).hasContent(one.strip());
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
      EarlierResults stopped = EarlierResults.open(state, BASIS, RuleCatalogue.load(), true);
      stopped.keep(stopped.report(ada, ada, () -> count(ada)));
      // Not closed: what a program that is killed leaves behind.
      Files.writeString(state, Files.readString(state) + "{\"sha256\":\"12");

      run(BASIS, true, ada, ben);

      assertThat(checked).containsExactly(ben);
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

  @Test
  void theBasisHoldsTheHashOfTheProfile() throws Exception {
    // FIPS 180-4, published example: SHA-256 of "abc" (from memory).
    Path profile = Files.writeString(folder.resolve("course.yaml"), "abc");

    assertThat(Basis.of("1", Optional.of(profile)).profile())
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    assertThat(Basis.of("1", Optional.empty()).profile()).isEqualTo("none");
  }
}
