package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.call;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.row;
import static tenthmark.measurement.functions.Calls.table;
import static tenthmark.measurement.functions.Labels.labelled;
import static tenthmark.measurement.functions.Labels.sentence;

import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Grid;

class LabCarryPairTest {

  /** JCGM 100:2008, H.2: voltage, current and phase of an element, and R, X and Z from them. */
  private final Grid element =
      new Grid()
          .put("A1", 4.9990)
          .put("A2", 19.6610e-3)
          .put("A3", 1.04446)
          .put("B1", "=A1/A2*COS(A3)")
          .put("B2", "=A1/A2*SIN(A3)")
          .put("B3", "=A1/A2")
          .put("B4", "=2*A1")
          .put("B5", "=5-0.1*A2");

  /**
   * Of the means of the five observations in table H.2 (from memory): V 5.007, 4.994, 5.005, 4.990,
   * 4.999; I 19.663, 19.639, 19.640, 19.685, 19.678 mA; phase 1.0456, 1.0438, 1.0468, 1.0428,
   * 1.0433. The standard prints them rounded, as 0.0032, 0.0095 and 0.00075, with -0.36, 0.86 and
   * -0.65.
   */
  private static final Value UNCERTAINTIES = column(3.20936e-3, 9.47101e-6, 7.52064e-4);

  private static final Value CORRELATIONS =
      table(row(1, -0.355311, 0.857624), row(-0.355311, 1, -0.645111), row(0.857624, -0.645111, 1));

  @Nested
  class ResistanceReactanceAndImpedance {

    // JCGM 100:2008, table H.4 (from memory): u(R) = 0.071, u(X) = 0.295, u(Z) = 0.236 ohm; r(R,X)
    // =
    // -0.588, r(R,Z) = -0.485, r(X,Z) = 0.993
    @ParameterizedTest
    @CsvSource({
      "B1, B2, 0.071, 0.295, -0.588",
      "B1, B3, 0.071, 0.236, -0.485",
      "B2, B3, 0.295, 0.236, 0.993"
    })
    void correlateAsPrinted(
        String first, String second, double uncertainty, double other, double correlation) {
      Map<String, Double> pair = labelled(pair(first, second, CORRELATIONS));
      assertThat(pair.get("uncertainty of result")).isCloseTo(uncertainty, within(1e-3));
      assertThat(pair.get("uncertainty of other")).isCloseTo(other, within(1e-3));
      assertThat(pair.get("correlation")).isCloseTo(correlation, within(6e-4));
      assertThat(pair.get("covariance"))
          .isCloseTo(
              pair.get("correlation")
                  * pair.get("uncertainty of result")
                  * pair.get("uncertainty of other"),
              within(1e-12));
    }
  }

  // By hand: one shared input of two independent ones
  @Test
  void isTheSharedPartOfIndependentInputs() {
    Map<String, Double> pair = labelled(pair("B3", "B4", null));
    double ofVoltage = 3.20936e-3 / 19.6610e-3;
    double ofCurrent = 4.9990 / Math.pow(19.6610e-3, 2) * 9.47101e-6;
    assertThat(pair.get("uncertainty of other")).isCloseTo(2 * 3.20936e-3, within(1e-15));
    assertThat(pair.get("correlation"))
        .isCloseTo(ofVoltage / Math.hypot(ofVoltage, ofCurrent), within(1e-12));
  }

  @Test
  void isOneWithItselfAndNoneWithoutSharedInputs() {
    assertThat(labelled(pair("B2", "B2", null)).get("correlation")).isCloseTo(1, within(1e-12));
    assertThat(labelled(pair("B4", "B5", null)).get("correlation")).isZero();
  }

  @Test
  void refusesWhatHasNoUncertainty() {
    assertThat(
            sentence(
                call(
                    "LAB_CARRYPAIR",
                    cells("B4", "B4"),
                    cells("B5", "B5"),
                    cells("A1", "A3"),
                    column(0, 0.1, 0))))
        .isEqualTo(
            "LAB_CARRYPAIR: one of the two results has no uncertainty, so that the two cannot err"
                + " together.");
    assertThat(
            sentence(
                call(
                    "LAB_CARRYPAIR",
                    cells("B1", "B1"),
                    cells("B2", "B3"),
                    cells("A1", "A3"),
                    UNCERTAINTIES)))
        .startsWith("LAB_CARRYPAIR: other is a range");
  }

  private Value pair(String first, String second, Value correlations) {
    return call(
        "LAB_CARRYPAIR",
        cells(first, first),
        cells(second, second),
        cells("A1", "A3"),
        UNCERTAINTIES,
        correlations);
  }

  private Value cells(String from, String to) {
    CellAddress first = Grid.address(from);
    CellAddress last = Grid.address(to);
    return new Value.Reference(
        new CellBlock(
            new CellRange(first.sheet(), first.column(), first.row(), last.column(), last.row()),
            element));
  }
}
