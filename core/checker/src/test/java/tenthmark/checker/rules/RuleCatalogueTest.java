package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RuleCatalogueTest {

  private final RuleCatalogue catalogue = RuleCatalogue.load();

  /** A rule that is not registered would be missed by nobody; a new one is added here. */
  @Test
  void findsEveryRule() {
    assertThat(catalogue.rules())
        .extracting(rule -> rule.declaration().id())
        .containsExactlyInAnyOrder(
            "accepted-missed",
            "argument-unlikely",
            "calculation-typed-in",
            "carried-differs",
            "carried-otherwise",
            "combined-otherwise",
            "copy-differs",
            "digits-unmatched",
            "display-reading",
            "error-cell",
            "factor-slip",
            "fraction-otherwise",
            "instrument-unlike-apparatus",
            "length-one-end",
            "not-checkable",
            "not-read",
            "nothing-read",
            "number-as-text",
            "physical-missing",
            "quantity-missing",
            "range-short",
            "rationale-missing",
            "reaction-missing",
            "reading-differs",
            "repeat-differs",
            "result-differs",
            "result-stale",
            "saved-without-extension",
            "scale-unlike-apparatus",
            "scatter-unlikely",
            "sheet-hidden",
            "slope-too-sure",
            "symbol-missing",
            "total-differs",
            "total-short",
            "typed-over",
            "uncertainty-exceeds-value",
            "uncertainty-missing",
            "uncertainty-not-positive",
            "unit-missing",
            "unit-other-than-expected",
            "unit-unknown",
            "unit-unlike-expected",
            "unit-unlike-formula",
            "units-mixed",
            "words-unlike-numbers");
  }
}
