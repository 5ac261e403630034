package tenthmark.checker.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.course.Course;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.profile.ProfileText;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Limits;

/** Students and numbers are invented. */
class DistributionTest {

  @TempDir Path folder;

  private FileReport report(Profile profile, String name, Object value, String unit, Object size) {
    Path file =
        Grid.sheet("Bench")
            .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
            .row("Crank arm", value, unit, size, "Fine marks, two ends.")
            .xlsx(folder.resolve(name));
    return FileChecker.load(profile, Limits.DEFAULT).check(file);
  }

  private static Profile profile(String... lines) {
    ProfileReader reader = new ProfileReader(RuleCatalogue.load().ids());
    return ((ProfileText.Usable) reader.read(String.join("\n", lines))).profile();
  }

  @Test
  void isInTheUnitOfTheCourse() {
    Profile profile =
        profile(
            "quantities:",
            "  - {name: crank arm, unit: mm, accepted: 172.5, uncertainty: 0.5}",
            "  - {name: grip, unit: mm}");
    FileReport ada = report(profile, "ada.xlsx", 17.2, "cm", 0.05);
    FileReport ben = report(profile, "ben.xlsx", 172.1, "mm", null);
    FileReport cleo = report(profile, "cleo.xlsx", 172.1, "kg", 0.5);

    List<Distribution> all = Distribution.of(List.of(ada, ben, cleo), profile.course());

    assertThat(all).hasSize(1);
    assertThat(all.get(0).accepted().orElseThrow().value()).isEqualTo(172.5);
    assertThat(all.get(0).values())
        .containsExactly(
            new Distribution.Value(ada.file(), 172, Optional.of(0.5)),
            new Distribution.Value(ben.file(), 172.1, Optional.empty()));
  }

  @Test
  void withoutExpectationsIsWhatThreeWorkbooksNameAlike() {
    List<FileReport> reports =
        List.of(
            report(Profile.NONE, "ada.xlsx", 172.0, "mm", 0.5),
            report(Profile.NONE, "ben.xlsx", 172.1, "mm", 0.5),
            report(Profile.NONE, "cleo.xlsx", 172.2, "mm", 0.5));

    assertThat(Distribution.of(reports, Course.PLAIN))
        .singleElement()
        .satisfies(
            found -> {
              assertThat(found.quantity()).isEqualTo("Crank arm");
              assertThat(found.unit()).isEqualTo("mm");
              assertThat(found.values())
                  .extracting(Distribution.Value::value)
                  .containsExactly(172.0, 172.1, 172.2);
            });
    assertThat(Distribution.of(reports.subList(0, 2), Course.PLAIN)).isEmpty();
  }
}
