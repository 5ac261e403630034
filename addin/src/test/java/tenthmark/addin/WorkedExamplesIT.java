package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.addin.generator.WorkedExample;
import tenthmark.addin.generator.WorkedExample.Step;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;

/** The worked examples of the reference, typed into a real Calc. */
@ExtendWith(OfficeExtension.class)
class WorkedExamplesIT {

  @ParameterizedTest
  @MethodSource
  void showWhatTheReferenceSays(WorkedExample example, Office office) throws Exception {
    try (Workbook workbook = office.create()) {
      for (Step step : example.steps()) {
        workbook.set(step.cell(), step.content().replace("LAB_", "TENTHMARK.LAB."));
      }
      for (Step step : example.steps()) {
        if (step.isFormula()) {
          assertThat(shown(workbook, step)).as(step.content()).isEqualTo(step.shows());
        }
      }
    }
  }

  static Stream<WorkedExample> showWhatTheReferenceSays() {
    return WorkedExample.all().stream();
  }

  /** A number to the digits that the reference prints. */
  private static String shown(Workbook workbook, Step step) throws Exception {
    if (workbook.error(step.cell()) != 0 || workbook.isText(step.cell())) {
      return workbook.shown(step.cell());
    }
    int digits = new BigDecimal(step.shows()).scale();
    return new BigDecimal(workbook.number(step.cell()))
        .setScale(digits, RoundingMode.HALF_UP)
        .toPlainString();
  }
}
