package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

/** Sentences about agreement. Numbers are invented. */
class WordsUnlikeNumbersTest {

  private static final String PROFILE =
      """
      quantities:
        - name: g
          unit: m/s²
          accepted: 9.81
      """;

  private static List<Finding> said(double value, double uncertainty, String sentence) {
    Grid grid =
        Grid.sheet("Records")
            .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
            .row("g", value, "m/s²", uncertainty, REASON)
            .row()
            .row(sentence);
    return Findings.in(grid, PROFILE).stream()
        .filter(finding -> finding.rule().id().equals("words-unlike-numbers"))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Our result agrees with the accepted value.",
        "It lies within the uncertainty of the handbook.",
        "The two are consistent"
      })
  void aClaimOfAgreementIsFoundFarOff(String sentence) {
    assertThat(said(9.42, 0.05, sentence))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.cell().place()).isEqualTo("A4");
              assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
              assertThat(Findings.found(finding)).contains(sentence);
            });
    assertThat(said(9.79, 0.05, sentence)).isEmpty();
    assertThat(said(9.72, 0.05, sentence)).isEmpty();
  }

  @Test
  void aClaimOfDisagreementIsFoundWithinTheUncertainties() {
    String sentence = "The result does not agree with 9.81, so something went wrong.";

    assertThat(said(9.79, 0.05, sentence)).hasSize(1);
    assertThat(said(9.42, 0.05, sentence)).isEmpty();
  }

  @Test
  void nothingIsSaidOfOtherSentences() {
    assertThat(said(9.42, 0.05, "We measured with care.")).isEmpty();
  }
}
