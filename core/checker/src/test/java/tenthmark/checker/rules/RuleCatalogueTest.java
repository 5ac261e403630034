package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RuleCatalogueTest {

  private final RuleCatalogue catalogue = RuleCatalogue.load();

  @Test
  void findsEveryRule() {
    assertThat(catalogue.rules())
        .extracting(rule -> rule.declaration().id())
        .doesNotHaveDuplicates()
        .contains(
            "uncertainty-missing",
            "unit-missing",
            "rationale-missing",
            "total-differs",
            "reading-differs",
            "length-one-end",
            "display-reading",
            "reaction-missing",
            "digits-unmatched",
            "result-differs",
            "result-stale",
            "typed-over",
            "units-mixed",
            "argument-unlikely",
            "error-cell",
            "uncertainty-exceeds-value",
            "saved-without-extension",
            "not-checkable",
            "number-as-text");
  }
}
