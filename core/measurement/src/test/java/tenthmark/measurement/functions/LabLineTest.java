package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.call;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;
import static tenthmark.measurement.functions.Labels.labelled;
import static tenthmark.measurement.functions.Labels.sentence;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.ReferenceData;
import tenthmark.measurement.catalogue.Value;

/** LAB_LINE and the functions that give a part of it. */
class LabLineTest {

  private static final Value X = column(1, 2, 3, 4);
  private static final Value Y = column(2, 4, 5, 9);

  @Nested
  class Table {

    // By hand: mean x 2.5, mean y 5, Sxx 5, Sxy 11, residuals 0.3, 0.1, -1.1, 0.7 (squares 1.8)
    @Test
    void holdsAllOfTheLine() {
      Map<String, Double> line = labelled(call("LAB_LINE", X, Y));
      assertThat(line)
          .containsOnlyKeys(
              "slope",
              "intercept",
              "slope uncertainty",
              "intercept uncertainty",
              "correlation of slope and intercept",
              "degrees of freedom",
              "residual standard deviation");
      assertThat(line.get("slope")).isCloseTo(2.2, within(1e-14));
      assertThat(line.get("intercept")).isCloseTo(-0.5, within(1e-14));
      assertThat(line.get("residual standard deviation")).isCloseTo(Math.sqrt(0.9), within(1e-14));
      assertThat(line.get("slope uncertainty")).isCloseTo(Math.sqrt(0.9 / 5), within(1e-14));
      assertThat(line.get("intercept uncertainty"))
          .isCloseTo(Math.sqrt(0.9 * (1 / 4.0 + 2.5 * 2.5 / 5)), within(1e-14));
      assertThat(line.get("correlation of slope and intercept"))
          .isCloseTo(-2.5 / Math.sqrt(30 / 4.0), within(1e-14));
      assertThat(line.get("degrees of freedom")).isEqualTo(2);
    }

    @Test
    void saysWhatChiSquaredNeeds() {
      Value.Table line = (Value.Table) call("LAB_LINE", X, Y);
      assertThat(line.rows().get(5))
          .containsExactly(Value.of("chi-squared"), Value.of("needs ux or uy"));
    }

    // The same points with 0.5 for each uy: the line stays, the uncertainties are those of uy
    @Test
    void takesItsUncertaintiesFromThoseOfThePoints() {
      Map<String, Double> line = labelled(call("LAB_LINE", X, Y, null, 0.5));
      assertThat(line.get("slope")).isCloseTo(2.2, within(1e-14));
      assertThat(line.get("slope uncertainty")).isCloseTo(0.5 / Math.sqrt(5), within(1e-14));
      assertThat(line.get("chi-squared")).isCloseTo(1.8 / 0.25, within(1e-13));
      assertThat(line.get("residual standard deviation")).isCloseTo(Math.sqrt(0.9), within(1e-14));
      assertThat(labelled(call("LAB_LINE", X, Y, null, column(0.5, 0.5, 0.5, 0.5))))
          .isEqualTo(line);
    }

    // By hand: sum(xy) 61, sum(x²) 30
    @ParameterizedTest
    @ValueSource(strings = {"yes", "TRUE", "1"})
    void goesThroughTheOrigin(String origin) {
      Map<String, Double> line = labelled(call("LAB_LINE", X, Y, null, null, origin));
      assertThat(line.get("slope")).isCloseTo(61 / 30.0, within(1e-14));
      assertThat(line.get("intercept")).isZero();
      assertThat(line.get("intercept uncertainty")).isZero();
      assertThat(line.get("correlation of slope and intercept")).isZero();
      assertThat(line.get("degrees of freedom")).isEqualTo(3);
      assertThat(call("LAB_LINE", X, Y, null, null, 1))
          .isEqualTo(call("LAB_LINE", X, Y, null, null, origin));
    }

    // Both variables with uncertainties, through the origin: by swapping the axes the slope inverts
    @Test
    void goesThroughTheOriginWithErrorsInBothVariables() {
      double slope = number("LAB_SLOPE", X, Y, 0.1, 0.3, 1);
      assertThat(number("LAB_SLOPE", Y, X, 0.3, 0.1, 1)).isCloseTo(1 / slope, within(1e-13));
    }
  }

  @Nested
  class SingleNumbers {

    @Test
    void areThoseOfTheTable() {
      for (Object uy : new Object[] {null, 0.5, column(0.1, 0.2, 0.3, 0.4)}) {
        Map<String, Double> line = labelled(call("LAB_LINE", X, Y, null, uy));
        assertThat(number("LAB_SLOPE", X, Y, null, uy)).isEqualTo(line.get("slope"));
        assertThat(number("LAB_SLOPEERROR", X, Y, null, uy))
            .isEqualTo(line.get("slope uncertainty"));
        assertThat(number("LAB_INTERCEPT", X, Y, null, uy)).isEqualTo(line.get("intercept"));
        assertThat(number("LAB_INTERCEPTERROR", X, Y, null, uy))
            .isEqualTo(line.get("intercept uncertainty"));
      }
    }
  }

  @Nested
  class ThroughTwoPoints {

    // By hand from (1, 2 ± 0.1) and (3, 8 ± 0.2), each independent (JCGM 100:2008, 5.1.2): slope
    // (y2 - y1)/2, intercept 1.5 y1 - 0.5 y2
    @Test
    void carriesTheUncertaintiesOfThePoints() {
      Value line = call("LAB_LINE", column(1, 3), column(2, 8), null, column(0.1, 0.2));
      assertThat(labelled(line).get("slope")).isCloseTo(3, within(1e-14));
      assertThat(labelled(line).get("intercept")).isCloseTo(-1, within(1e-14));
      assertThat(labelled(line).get("slope uncertainty"))
          .isCloseTo(Math.sqrt(0.1 * 0.1 + 0.2 * 0.2) / 2, within(1e-14));
      assertThat(labelled(line).get("intercept uncertainty"))
          .isCloseTo(Math.sqrt(0.15 * 0.15 + 0.1 * 0.1), within(1e-14));
      assertThat(labelled(line).get("degrees of freedom")).isZero();
      assertThat(labelled(line).get("chi-squared")).isCloseTo(0, within(1e-20));
      assertThat(((Value.Table) line).rows().get(7))
          .containsExactly(
              Value.of("residual standard deviation"), Value.of("needs one more point"));
    }

    // The same points with uncertainties of x instead: those of y are 3 times them
    @Test
    void carriesThoseInX() {
      assertThat(number("LAB_SLOPEERROR", column(1, 3), column(2, 8), column(0.1, 0.2)))
          .isCloseTo(3 * Math.sqrt(0.1 * 0.1 + 0.2 * 0.2) / 2, within(1e-13));
    }

    @Test
    void orThroughOneAndTheOrigin() {
      assertThat(number("LAB_SLOPEERROR", column(4), column(8), null, 0.2, "yes"))
          .isCloseTo(0.05, within(1e-15));
    }

    @Test
    void needsTheUncertaintyOfAReadingThatIsReadBack() {
      assertThat(sentence(call("LAB_LINEBACK", 5, column(1, 3), column(2, 8), null, 0.1)))
          .isEqualTo(
              "LAB_LINEBACK: u0 is left out, and these points always lie on their line: without"
                  + " scatter it must be given.");
      assertThat(
              ((Value.Table)
                      call("LAB_LINEBACK", 5, column(1, 3), column(2, 8), null, 0.1, null, 0.1))
                  .cells()
                  .get(0))
          .isEqualTo(Value.of(2));
    }

    @Test
    void hasNoUncertaintyByScatter() {
      assertThat(fault("LAB_SLOPEERROR", column(1, 3), column(2, 8)))
          .contains("the fit needs at least 3");
    }
  }

  @Nested
  class Prediction {

    // JCGM 100:2008, H.3.4: the correction of the thermometer at 30 °C is -0.1494 °C, u = 0.0041
    // °C;
    // from memory
    @Test
    void ofTheThermometer() {
      List<double[]> rows = ReferenceData.rows("gum/gum-h3.csv");
      Value t = Labels.column(rows.stream().mapToDouble(row -> row[0]).toArray());
      Value b = Labels.column(rows.stream().mapToDouble(row -> row[1]).toArray());
      List<Value> predicted = ((Value.Table) call("LAB_LINEAT", 30, t, b)).cells();
      assertThat(predicted).hasSize(2);
      assertThat(((Value.Numeric) predicted.get(0)).number()).isCloseTo(-0.1494, within(5e-5));
      assertThat(((Value.Numeric) predicted.get(1)).number()).isCloseTo(0.0041, within(5e-5));
    }

    @Test
    void atZeroIsTheIntercept() {
      List<Value> predicted = ((Value.Table) call("LAB_LINEAT", 0, X, Y, 0.1, 0.2)).cells();
      assertThat(predicted)
          .containsExactly(
              call("LAB_INTERCEPT", X, Y, 0.1, 0.2), call("LAB_INTERCEPTERROR", X, Y, 0.1, 0.2));
    }
  }

  @Nested
  class ReadingBack {

    // EURACHEM/CITAC CG 4, example A5 (cadmium from ceramic ware): absorbances of five standards in
    // mg/l, each three times; the sample, read twice, has 0.26 mg/l with u = 0.018 mg/l. The
    // printed
    // result was looked up, the absorbances are from memory: with the printed slope 0.2410,
    // intercept 0.0087 and residual standard deviation 0.005486 they agree.
    @Test
    void ofCadmiumFromAnAbsorbance() {
      Value standards =
          column(0.1, 0.1, 0.1, 0.3, 0.3, 0.3, 0.5, 0.5, 0.5, 0.7, 0.7, 0.7, 0.9, 0.9, 0.9);
      Value absorbances =
          column(
              0.028, 0.029, 0.029, 0.084, 0.083, 0.081, 0.135, 0.131, 0.133, 0.180, 0.181, 0.183,
              0.215, 0.230, 0.216);
      Map<String, Double> line = labelled(call("LAB_LINE", standards, absorbances));
      assertThat(line.get("slope")).isCloseTo(0.2410, within(5e-5));
      assertThat(line.get("intercept")).isCloseTo(0.0087, within(5e-5));
      assertThat(line.get("residual standard deviation")).isCloseTo(0.005486, within(5e-7));
      double signal = 0.0087 + 0.2410 * 0.26;
      List<Value> back = back(column(signal - 0.001, signal + 0.001), standards, absorbances);
      assertThat(back.get(0)).isEqualTo(back(signal, standards, absorbances).get(0));
      assertThat(numeric(back.get(0))).isCloseTo(0.26, within(5e-4));
      assertThat(numeric(back.get(1))).isCloseTo(0.018, within(5e-4));
    }

    // D. Harvey, Modern Analytical Chemistry (1999): the line of table 5.1 has slope 120.706,
    // intercept 0.209 and residual standard deviation 0.4035 (p. 120 to 122, looked up); three
    // signals of 29.32, 29.16 and 29.51 give 0.241 with s = 0.0024 (example 5.12, from memory)
    @Test
    void ofAConcentrationFromThreeSignals() {
      Value standards = column(0, 0.1, 0.2, 0.3, 0.4, 0.5);
      Value signals = column(0.00, 12.36, 24.83, 35.91, 48.79, 60.42);
      List<Value> back = back(column(29.32, 29.16, 29.51), standards, signals);
      assertThat(numeric(back.get(0))).isCloseTo(0.241, within(5e-4));
      assertThat(numeric(back.get(1))).isCloseTo(0.0024, within(5e-5));
    }

    // By hand on X and Y: slope 2.2, Sxx 5, s² 0.9; at the centre (2.5, 5) the line has s²/4
    @Test
    void takesTheUncertaintyOfTheReadingThatIsGiven() {
      List<Value> back = back(5, X, Y, null, null, null, 0.3);
      assertThat(numeric(back.get(0))).isCloseTo(2.5, within(1e-14));
      assertThat(numeric(back.get(1))).isCloseTo(Math.sqrt(0.09 + 0.9 / 4) / 2.2, within(1e-14));
    }

    @Test
    void isTheInverseOfThePrediction() {
      List<Value> predicted = ((Value.Table) call("LAB_LINEAT", 3.7, X, Y, 0.1, 0.2)).cells();
      List<Value> back = back(numeric(predicted.get(0)), X, Y, 0.1, 0.2, null, 0.0);
      assertThat(numeric(back.get(0))).isCloseTo(3.7, within(1e-13));
      assertThat(numeric(back.get(1)))
          .isCloseTo(
              numeric(predicted.get(1)) / number("LAB_SLOPE", X, Y, 0.1, 0.2), within(1e-13));
    }

    @Test
    void needsALineThatRisesOrFalls() {
      assertThat(sentence(call("LAB_LINEBACK", 5, column(1, 2, 3, 4), column(1, 2, 2, 1))))
          .isEqualTo("LAB_LINEBACK: the line is flat, so that no single x belongs to a y.");
    }

    private static List<Value> back(Object... arguments) {
      return ((Value.Table) call("LAB_LINEBACK", arguments)).cells();
    }

    private static double numeric(Value value) {
      return ((Value.Numeric) value).number();
    }
  }

  @Nested
  class SteepAndShallow {

    // Corner to corner: (0, 0.5) to (2, 5.5) and (0, 1.5) to (2, 4.5)
    @Test
    void areLaidThroughTheBars() {
      Map<String, Double> lines =
          labelled(call("LAB_STEEPSHALLOW", column(0, 2), column(1, 5), 0, 0.5));
      assertThat(lines.keySet())
          .containsExactly(
              "steepest slope",
              "steepest intercept",
              "shallowest slope",
              "shallowest intercept",
              "slope",
              "slope uncertainty",
              "intercept",
              "intercept uncertainty");
      double[] expected = {2.5, 0.5, 1.5, 1.5, 2, 0.5, 1, 0.5};
      assertThat(lines.values().stream().mapToDouble(Double::doubleValue).toArray())
          .containsExactly(expected, within(1e-14));
    }

    @Test
    void needBarsAndALineThroughThem() {
      assertThat(sentence(call("LAB_STEEPSHALLOW", X, Y, 0, 0.1)))
          .startsWith("LAB_STEEPSHALLOW: no straight line passes through all error bars");
      assertThat(sentence(call("LAB_STEEPSHALLOW", X, Y, 0)))
          .isEqualTo("LAB_STEEPSHALLOW: uy is blank; it must be a number or a range of numbers.");
      assertThat(sentence(call("LAB_STEEPSHALLOW", X, Y, 0, -1)))
          .contains("uy (row 1) is -1; it must be a number, zero or greater");
      assertThat(sentence(call("LAB_STEEPSHALLOW", column(1), column(2), 0, 1)))
          .contains("x, y have 1 row without a blank cell; the fit needs at least 2");
    }
  }

  @Nested
  class Cells {

    @Test
    void thatAreBlankTakeTheirPointAway() {
      assertThat(
              call(
                  "LAB_LINE",
                  column(1, 7, 2, 3, 8, 4, 9),
                  column(2, null, 4, 5, 8, 9, 1),
                  column(0.1, 0.1, 0.1, 0.1, null, 0.1, 0.1),
                  column(0.2, 0.2, 0.2, 0.2, 0.2, 0.2, null)))
          .isEqualTo(call("LAB_LINE", X, Y, 0.1, 0.2));
    }

    @Test
    void mustBeEquallyManyNumbers() {
      assertThat(sentence(call("LAB_LINE", X, column(1, 2, 3))))
          .isEqualTo("LAB_LINE: y has 3 cells and x has 4 cells; they must have equally many.");
      assertThat(sentence(call("LAB_LINE", X, Y, null, column(1, 1))))
          .contains("uy has 2 cells and x has 4 cells");
      assertThat(sentence(call("LAB_LINE", X, column(1, 2, "3 N", 4))))
          .isEqualTo("LAB_LINE: y (row 3) is the text \"3 N\"; it must be a number.");
      assertThat(sentence(call("LAB_LINE", X, Y, null, column(1, 1, 0, 1))))
          .isEqualTo("LAB_LINE: uy (row 3) is 0; it must be a number greater than zero.");
    }

    @Test
    void mustMakeALine() {
      assertThat(fault("LAB_SLOPE", column(1, 2, null), column(1, 2, 3)))
          .isEqualTo("LAB_SLOPE: x, y have 2 rows without a blank cell; the fit needs at least 3.");
      assertThat(fault("LAB_SLOPE", column(2, 2, 2), column(1, 2, 3)))
          .isEqualTo("LAB_SLOPE: every x is equal; a slope needs at least two different x.");
      assertThat(fault("LAB_SLOPE", column(0, 0), column(1, 2), null, null, "yes"))
          .isEqualTo("LAB_SLOPE: every x is 0; a slope needs at least one other x.");
      assertThat(fault("LAB_SLOPE", X, Y, 0)).contains("a point has no uncertainty in x nor in y");
      assertThat(fault("LAB_SLOPE", X, Y, null, null, "maybe"))
          .contains("origin is the text \"maybe\"; it must be TRUE or FALSE, 1 or 0, yes or no.");
    }
  }
}
