package tenthmark.checker.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.Rule;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Limits;
import tenthmark.measurement.catalogue.Catalogue;

class FileCheckerTest {

  @TempDir Path folder;

  @Test
  void keepsAFaultOfItsOwnToTheFile() {
    Rule broken =
        new Rule() {
          @Override
          public RuleDeclaration declaration() {
            return new RuleDeclaration("broken", Severity.ERROR);
          }

          @Override
          public List<Finding> check(Inspection inspection) {
            throw new IllegalStateException("a fault");
          }
        };
    FileChecker checker =
        new FileChecker(
            Catalogue.load(), new RuleCatalogue(List.of(broken)), Profile.NONE, Limits.DEFAULT);

    FileReport report = checker.check(Grid.sheet("Data").row(1).xlsx(folder.resolve("a.xlsx")));

    assertThat(report.problem())
        .hasValueSatisfying(
            line ->
                assertThat(line)
                    .matches(
                        "the checker itself failed \\(please report this: IllegalStateException at"
                            + " FileCheckerTest.*, line \\d+\\)"));
  }
}
