package tenthmark.checker.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.wording.SourceLiterals;

/** What a LAB function is for stands in its declaration alone. */
class FunctionNamesTest {

  @Test
  void noSourceOfTheCheckerHasTheNameOfALabFunction() {
    List<String> names =
        Catalogue.load().functions().stream()
            .map(function -> function.declaration().displayName())
            .toList();
    assertThat(names).contains("LAB_READING");
    Set<String> literals = SourceLiterals.ofThisModule().literals();
    assertThat(literals).contains("SUM");
    assertThat(literals.stream().filter(literal -> names.stream().anyMatch(literal::contains)))
        .isEmpty();
  }

  @Test
  void kindsOfFunctionsHoldThoseOfOursWithTheRole() {
    assertThat(NativeFunctions.SUMS).contains("SUM", "LAB_TOTAL").doesNotContain("LAB_RESULT");
    assertThat(NativeFunctions.MEANS).contains("AVERAGE", "LAB_WEIGHTED");
    assertThat(NativeFunctions.SPREADS).contains("STDEV.S", "LAB_REPEATS");
    assertThat(NativeFunctions.LINES)
        .contains("LINEST", "LAB_SLOPE", "LAB_LINE", "LAB_CURVE")
        .doesNotContain("LAB_SLOPEERROR");
    assertThat(NativeFunctions.role("LAB_CARRY")).contains(FunctionRole.CARRIED);
    assertThat(NativeFunctions.role("SUM")).isEmpty();
  }
}
