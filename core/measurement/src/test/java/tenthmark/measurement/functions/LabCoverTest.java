package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabCoverTest {

  // JCGM 100:2008: 7.2.4 (k = 2.26 for 9 and 95 %), H.1.7 (2.92 for 16 and 99 %); from memory
  @ParameterizedTest
  @CsvSource({"9, 95, 2.26", "16, 99, 2.92"})
  void agreesWithTheGuide(double freedom, double level, double printed) {
    assertThat(number("LAB_COVER", freedom, level)).isCloseTo(printed, within(0.005));
  }

  @Test
  void usesNinetyFivePercentWhenNothingIsSaid() {
    assertThat(number("LAB_COVER", 9)).isEqualTo(number("LAB_COVER", 9, 95));
  }

  @Test
  void liesBetweenItsWholeNeighboursForAFreedomThatIsNotWhole() {
    assertThat(number("LAB_COVER", 16.7))
        .isBetween(number("LAB_COVER", 17), number("LAB_COVER", 16));
  }

  @ParameterizedTest
  @ValueSource(strings = {"infinite", " Infinite "})
  void takesTheWordInfinite(String word) {
    assertThat(number("LAB_COVER", word, 99.73002039367398)).isCloseTo(3, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"95 %", "95%", " 95,0 % ", "95\u00A0%"})
  void takesATextWithThePercentSign(String level) {
    assertThat(number("LAB_COVER", 9, level)).isEqualTo(number("LAB_COVER", 9, 95));
  }

  // 0.95, which is what 95% without quotation marks comes to, and what has no meaning
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.95, 1, 100, 950, -5})
  void refusesALevelThatIsNotInPercent(double level) {
    assertThat(fault("LAB_COVER", 9, level))
        .endsWith(
            "; it must be a number of percent above 1 and below 100, such as 95, or a text such as"
                + " \"95 %\" (95% without quotation marks is 0.95).");
  }

  @Test
  void refusesOtherTexts() {
    assertThat(fault("LAB_COVER", 9, "high")).contains("level is the text \"high\"");
    assertThat(fault("LAB_COVER", 9, "120 %")).contains("level is the text \"120 %\"");
  }

  @Test
  void refusesAFreedomBelowOneAndOtherWords() {
    assertThat(fault("LAB_COVER", 0.5))
        .isEqualTo(
            "LAB_COVER: freedom is 0.5; it must be a number, 1 or greater, or the word infinite.");
    assertThat(fault("LAB_COVER", "many")).contains("freedom is the text \"many\"");
    assertThat(fault("LAB_COVER", new Object[] {null})).contains("freedom is blank");
  }
}
