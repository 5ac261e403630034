package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

/** Numbers of a bicycle workshop, invented. */
class ArgumentUnlikelyTest {

  @Test
  void saysWhichHaveChangedPlaces() {
    Finding finding = Findings.onlyInCells(Grid.sheet("Data").row("=LAB_DISPLAY(412.6,0.1,0.1,2)"));

    assertThat(finding.rule().id()).isEqualTo("argument-unlikely");
    assertThat(Findings.found(finding))
        .isEqualTo(
            "LAB_DISPLAY: resolution is 412.6, but reading only 0.1: have the two changed places?"
                + " (=LAB_DISPLAY(412.6;0.1;0.1;2))");
    assertThat(Findings.expected(finding)).isEqualTo("arguments in the order of the function");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=LAB_AGREE(172.4,172.5,0.5,0.2)",
        "=LAB_GAP(172.4,172.5,0.5,0.2)",
        "=LAB_RESULT(2,82.5)",
        "=1+LAB_ROUNDEDERROR(2,82.5)"
      })
  void isFoundInEveryCall(String formula) {
    assertThat(Findings.inCells(Grid.sheet("Data").row(formula)))
        .containsExactly("A1 argument-unlikely");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=LAB_AGREE(172.4,0.5,172.5,0.2)",
        "=LAB_AGREE(0.3,0.5,0.1,0.5)",
        "=LAB_RESULT(0,0.5)",
        "=LAB_RESULT(0.1,0.5)",
        "=LAB_DISPLAY(0.1,0,0.1,2)"
      })
  void isNotFoundInWhatMayBeMeant(String formula) {
    assertThat(Findings.inCells(Grid.sheet("Data").row(formula))).isEmpty();
  }
}
