package tenthmark.measurement.repeats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class StrayTestTest {

  // ASTM E178 and Grubbs 1969, two-sided 5 % (one-sided 2.5 %); digits of the file computed from
  // the formula and confirmed against a printed table for n = 3 to 15
  @ParameterizedTest
  @CsvFileSource(resources = "/reference/tables/grubbs-critical.csv", numLinesToSkip = 1)
  void grubbsAgreesWithTheTable(int count, double oneSided5, double twoSided5, double twoSided1) {
    assertThat(limit(StrayTest.GRUBBS, count)).isCloseTo(twoSided5, within(0.0006));
    assertThat(StrayTest.GRUBBS.limit(count, 0.05, Side.HIGH)).isCloseTo(oneSided5, within(0.0006));
    assertThat(StrayTest.GRUBBS.limit(count, 0.025, Side.LOW)).isCloseTo(twoSided5, within(0.0006));
    assertThat(StrayTest.GRUBBS.limit(count, 0.01, Side.BOTH)).isCloseTo(twoSided1, within(0.0006));
  }

  // Printed table, LibreTexts Analytic References appendix 07, two-sided 5 %; three decimals
  @ParameterizedTest
  @CsvSource({"3, 1.154", "4, 1.481", "5, 1.715", "6, 1.887", "8, 2.126", "10, 2.290", "15, 2.549"})
  void grubbsAgreesWithAPrintedTable(int count, double printed) {
    assertThat(limit(StrayTest.GRUBBS, count)).isCloseTo(printed, within(0.0015));
  }

  // Public table of Chauvenet's criterion, three decimals
  @ParameterizedTest
  @CsvFileSource(resources = "/reference/tables/chauvenet.csv", numLinesToSkip = 1)
  void chauvenetAgreesWithTheTable(int count, double limit) {
    assertThat(limit(StrayTest.CHAUVENET, count)).isCloseTo(limit, within(0.0006));
  }

  private static double limit(StrayTest test, int count) {
    return test.limit(count, test.usualLevel(), Side.BOTH);
  }
}
