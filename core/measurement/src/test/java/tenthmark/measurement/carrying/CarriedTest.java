package tenthmark.measurement.carrying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.carrying.Models.model;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Model;

class CarriedTest {

  private static final Combination STRAIGHT = new Straight();
  private static final Combination QUADRATURE = new Quadrature();

  private static double[] numbers(double... numbers) {
    return numbers;
  }

  @Nested
  class PublishedExamples {

    // JCGM 100:2008, annex H.1, table H.1 (end gauge), from memory, printed figures recomputed from
    // the inputs; lengths in mm
    @Test
    void endGauge() {
      Carried carried =
          Carried.through(
              model("lS+d-lS*(da*theta+aS*dt)", "lS", "d", "aS", "theta", "da", "dt"),
              numbers(50.000623, 215e-6, 11.5e-6, -0.1, 0, 0),
              numbers(25e-6, 9.7e-6, 1.2e-6, 0.41, 0.58e-6, 0.0289));
      assertThat(carried.value()).isCloseTo(50.000838, within(5e-7));
      assertThat(carried.uncertainty(QUADRATURE)).isCloseTo(32e-6, within(0.5e-6));
      assertThat(carried.contributions())
          .containsExactly(numbers(25e-6, 9.7e-6, 0, 0, 2.9e-6, -16.6e-6), within(0.05e-6));
    }

    // EURACHEM/CITAC CG 4, 2nd ed. (2000), example A1, cadmium standard; confirmed from the guide's
    // HTML edition; m in mg, V in mL, result in mg/L
    @Test
    void cadmiumStandard() {
      Carried carried =
          Carried.through(
              model("1000*m*P/V", "P", "m", "V"),
              numbers(0.9999, 100.28, 100),
              numbers(5.8e-5, 0.05, 0.07));
      assertThat(carried.value()).isCloseTo(1002.7, within(0.05));
      assertThat(carried.uncertainty(QUADRATURE)).isCloseTo(0.9, within(0.05));
    }

    // EA-4/02, example S2, 10 kg weight, from memory, recomputed; in g, printed 29.3 mg
    @Test
    void weightOfTenKilograms() {
      Carried carried =
          Carried.through(
              model("mS+drift+dm+ecc+air", "mS", "drift", "dm", "ecc", "air"),
              numbers(10000.005, 0, 0.02, 0, 0),
              numbers(0.0225, 0.00866, 0.0144, 0.00577, 0.00577));
      assertThat(carried.value()).isCloseTo(10000.025, within(1e-9));
      assertThat(carried.uncertainty(QUADRATURE)).isCloseTo(0.0293, within(1e-4));
    }

    // JCGM 100:2008, 5.2.2, example: ten resistors of 1000 ohm in series, each known to 0.1 ohm
    // against one standard; 1 ohm if correlated, 0.32 ohm if they were not; from memory
    @Test
    void tenResistorsAgainstOneStandard() {
      String[] names = IntStream.range(0, 10).mapToObj(i -> "R" + i).toArray(String[]::new);
      double[] ohms = new double[10];
      double[] tenths = new double[10];
      double[][] ones = new double[10][10];
      Arrays.fill(ohms, 1000);
      Arrays.fill(tenths, 0.1);
      Arrays.stream(ones).forEach(row -> Arrays.fill(row, 1));
      Carried carried =
          Carried.through(model("SUM(" + String.join(";", names) + ")", names), ohms, tenths);
      assertThat(carried.uncertainty(Correlations.of(ones))).isCloseTo(1, within(1e-12));
      assertThat(carried.uncertainty(QUADRATURE)).isCloseTo(0.32, within(0.005));
    }

    // JCGM 100:2008, 5.1.3, example: power in a temperature-dependent resistor, P = V^2/(R0 (1 + a
    // (t - t0))), with its printed sensitivity coefficients; from memory, numbers are ours
    @Test
    void powerInAResistor() {
      double v = 5;
      double r0 = 40;
      double a = 0.004;
      double t = 35;
      double warm = 1 + a * (t - 20);
      double power = v * v / (r0 * warm);
      Carried carried =
          Carried.through(
              model("V^2/(R0*(1+a*(t-20)))", "V", "R0", "a", "t"),
              numbers(v, r0, a, t),
              numbers(0.01, 0.1, 0.0001, 0.5));
      assertThat(carried.sensitivities())
          .containsExactly(
              numbers(
                  2 * v / (r0 * warm),
                  -v * v / (r0 * r0 * warm),
                  -v * v * (t - 20) / (r0 * warm * warm),
                  -v * v * a / (r0 * warm * warm)),
              within(1e-14));
      assertThat(carried.value()).isCloseTo(power, within(1e-15));
    }

    // JCGM 100:2008, 5.1.5: V = mean + correction, 12 uV and 8.7 uV give 15 uV; from memory
    @Test
    void voltmeterReading() {
      assertThat(
              Carried.through(
                      model("V+dV", "V", "dV"), numbers(0.928571, 0), numbers(12e-6, 8.7e-6))
                  .uncertainty(QUADRATURE))
          .isCloseTo(15e-6, within(0.5e-6));
    }
  }

  @Nested
  class TextbookExamples {

    // formula; two values with uncertainties; printed straight and quadrature totals; tolerance is
    // half the last printed digit
    @ParameterizedTest(name = "{0}")
    @CsvSource(
        delimiter = '|',
        value = {
          "OpenStax College Physics ch. 1 problem 27, room | x*y | 3.955 | 0.005 | 3.050 | 0.005 |"
              + " 0.035 | 0.0005 | 0.025 | 0.0005",
          "OpenStax College Physics 1.3, floor (from memory) | x*y | 4 | 0.08 | 3 | 0.03 | 0.36 |"
              + " 0.005 | 0.2683 | 0.0001",
          "Harvey, Modern Analytical Chemistry 4C, pipet | x+y | 9.992 | 0.006 | 9.992 | 0.006 |"
              + " 0.012 | 0.0005 | 0.0085 | 0.00005",
          "Harvey, Modern Analytical Chemistry example 4.6, charge | x*y | 0.15 | 0.01 | 120 | 1 |"
              + " 1.35 | 0.005 | 1.2 | 0.05"
        })
    void combineAsPrinted(
        String source,
        String formula,
        double x,
        double ux,
        double y,
        double uy,
        double straight,
        double straightWithin,
        double quadrature,
        double quadratureWithin) {
      Carried carried = Carried.through(model(formula, "x", "y"), numbers(x, y), numbers(ux, uy));
      assertThat(carried.uncertainty(STRAIGHT)).isCloseTo(straight, within(straightWithin));
      assertThat(carried.uncertainty(QUADRATURE)).isCloseTo(quadrature, within(quadratureWithin));
    }
  }

  @Nested
  class Laws {

    private final Random random = new Random(31);
    private final Model curved = model("a^2*SQRT(b)/(c+a)-EXP(-b/c)", "a", "b", "c");

    private double[] point() {
      return random.doubles(3, 0.5, 4).toArray();
    }

    private double[] sizes() {
      return random.doubles(3, 0, 0.1).toArray();
    }

    @Test
    void uncertaintyGrowsWithItsInputs() {
      for (int i = 0; i < 200; i++) {
        double[] point = point();
        double[] sizes = sizes();
        double[] doubled = Arrays.stream(sizes).map(u -> 2 * u).toArray();
        for (Combination combination : new Combination[] {STRAIGHT, QUADRATURE}) {
          double once = Carried.through(curved, point, sizes).uncertainty(combination);
          assertThat(Carried.through(curved, point, doubled).uncertainty(combination))
              .isCloseTo(2 * once, within(1e-14 * once));
        }
      }
    }

    @Test
    void quadratureNeverExceedsStraightNorFallsBelowTheLargest() {
      for (int i = 0; i < 200; i++) {
        Carried carried = Carried.through(curved, point(), sizes());
        double largest = Arrays.stream(carried.contributions()).map(Math::abs).max().orElseThrow();
        assertThat(carried.uncertainty(QUADRATURE))
            .isLessThanOrEqualTo(carried.uncertainty(STRAIGHT))
            .isGreaterThanOrEqualTo(largest);
      }
    }

    @Test
    void changeOfUnitChangesOnlyTheUnit() {
      Model millimetres = model("4*PI()^2*(L/1000)/T^2", "L", "T");
      Model metres = model("4*PI()^2*L/T^2", "L", "T");
      for (int i = 0; i < 200; i++) {
        double length = random.nextDouble() + 0.1;
        double period = random.nextDouble() + 0.5;
        double inMetres =
            Carried.through(metres, numbers(length, period), numbers(0.002, 0.01))
                .uncertainty(QUADRATURE);
        double inMillimetres =
            Carried.through(millimetres, numbers(length * 1000, period), numbers(2, 0.01))
                .uncertainty(QUADRATURE);
        assertThat(inMillimetres).isCloseTo(inMetres, within(1e-12 * inMetres));
      }
    }

    @Test
    void relativeUncertaintiesOfAProductOfPowersAdd() {
      Model powers = model("a^3*b^-2*SQRT(c)", "a", "b", "c");
      for (int i = 0; i < 200; i++) {
        double[] point = point();
        double[] sizes = sizes();
        Carried carried = Carried.through(powers, point, sizes);
        double relative =
            3 * sizes[0] / point[0] + 2 * sizes[1] / point[1] + 0.5 * sizes[2] / point[2];
        assertThat(carried.uncertainty(STRAIGHT) / carried.value())
            .isCloseTo(relative, within(1e-13));
      }
    }

    @Test
    void sharesAddUpToOne() {
      Correlations correlations =
          Correlations.of(new double[][] {{1, 0.5, -0.2}, {0.5, 1, 0.1}, {-0.2, 0.1, 1}});
      for (int i = 0; i < 200; i++) {
        Carried carried = Carried.through(curved, point(), sizes());
        for (Combination combination : new Combination[] {STRAIGHT, QUADRATURE, correlations}) {
          assertThat(Arrays.stream(combination.shares(carried.contributions())).sum())
              .isCloseTo(1, within(1e-12));
        }
      }
    }
  }

  @Nested
  class CorrelatedInputs {

    private final double[] contributions = numbers(3, -4);

    @Test
    void withoutCorrelationAreIndependent() {
      assertThat(Correlations.of(new double[][] {{1, 0}, {0, 1}}).total(contributions))
          .isEqualTo(5);
    }

    @Test
    void fullyCorrelatedAddOrCancelWithTheirSigns() {
      assertThat(Correlations.of(new double[][] {{1, 1}, {1, 1}}).total(contributions))
          .isEqualTo(1);
      assertThat(Correlations.of(new double[][] {{1, -1}, {-1, 1}}).total(contributions))
          .isEqualTo(7);
    }

    // JCGM 100:2008, H.2, tables H.3 and H.4: resistance from V, I and phi with printed
    // correlations;
    // u(R) = 0.071 ohm, u(X) = 0.295 ohm, u(Z) = 0.236 ohm; all from memory
    @Test
    void resistanceAndReactanceTogether() {
      Correlations printed =
          Correlations.of(new double[][] {{1, -0.36, 0.86}, {-0.36, 1, -0.65}, {0.86, -0.65, 1}});
      double[] values = numbers(4.9990, 19.6610e-3, 1.04446);
      double[] sizes = numbers(0.0032, 0.0095e-3, 0.00075);
      String[] names = {"V", "I", "phi"};
      Carried resistance = Carried.through(model("V/I*COS(phi)", names), values, sizes);
      Carried reactance = Carried.through(model("V/I*SIN(phi)", names), values, sizes);
      Carried impedance = Carried.through(model("V/I", names), values, sizes);
      assertThat(resistance.value()).isCloseTo(127.732, within(5e-3));
      assertThat(reactance.value()).isCloseTo(219.847, within(5e-3));
      assertThat(impedance.value()).isCloseTo(254.260, within(5e-3));
      assertThat(resistance.uncertainty(printed)).isCloseTo(0.071, within(2e-3));
      assertThat(reactance.uncertainty(printed)).isCloseTo(0.295, within(2e-3));
      assertThat(impedance.uncertainty(printed)).isCloseTo(0.236, within(2e-3));
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "0.9 | 0 | 0 | 1 | must have 1 all along the diagonal; row 1 has not",
          "1 | 0.5 | 0.4 | 1 | must be the same on both sides of the diagonal; row 2, column 1"
              + " differs from row 1, column 2",
          "1 | 1.2 | 1.2 | 1 | contradict each other: no quantities can be correlated like that"
        })
    void areRefusedWhereTheyCannotBe(double a, double b, double c, double d, String problem) {
      assertThatThrownBy(() -> Correlations.of(new double[][] {{a, b}, {c, d}}))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("correlations " + problem + ".");
    }

    @Test
    void mayBeRounded() {
      double root = 0.707;
      assertThat(
              Correlations.problemOf(
                  new double[][] {{1, root, 0}, {root, 1, root + 0.0002}, {0, root + 0.0002, 1}}))
          .isEmpty();
      assertThat(Correlations.problemOf(new double[][] {{1, 0.9, 0}, {0.9, 1, 0.9}, {0, 0.9, 1}}))
          .isPresent();
    }
  }

  @Nested
  class Corners {

    @Test
    void boundASteadyModel() {
      Extremes extremes =
          Extremes.of(model("x*y/z", "x", "y", "z"), numbers(4, 3, 2), numbers(0.5, 1, 0.4));
      assertThat(extremes.lowest()).isEqualTo(3.5 * 2 / 2.4);
      assertThat(extremes.highest()).isEqualTo(4.5 * 4 / 1.6);
    }

    @Test
    void areAsFarApartAsTwiceTheStraightSumInALinearModel() {
      Random random = new Random(32);
      Model linear = model("3*a-2*b+c/4-7", "a", "b", "c");
      for (int i = 0; i < 200; i++) {
        double[] point = random.doubles(3, -5, 5).toArray();
        double[] sizes = random.doubles(3, 0, 1).toArray();
        Extremes extremes = Extremes.of(linear, point, sizes);
        double straight = Carried.through(linear, point, sizes).uncertainty(STRAIGHT);
        assertThat((extremes.highest() - extremes.lowest()) / 2).isCloseTo(straight, within(1e-13));
      }
    }

    @Test
    void includeTheMeasuredValuesThemselves() {
      Extremes extremes = Extremes.of(model("x^2", "x"), numbers(0), numbers(1));
      assertThat(extremes.lowest()).isZero();
      assertThat(extremes.highest()).isEqualTo(1);
    }

    @Test
    void areLimitedInNumber() {
      String[] names = IntStream.range(0, 17).mapToObj(i -> "x" + i).toArray(String[]::new);
      double[] ones = new double[17];
      Arrays.fill(ones, 1);
      Model sum = model(String.join("+", names), names);
      assertThatThrownBy(() -> Extremes.of(sum, ones, ones))
          .hasMessage(
              "17 inputs have an uncertainty; the corners of at most 16 can be tried. Use"
                  + " LAB_SIMULATE.");
      double[] sixteen = ones.clone();
      sixteen[3] = 0;
      assertThat(Extremes.of(sum, ones, sixteen).highest()).isEqualTo(33);
    }

    @Test
    void whereTheResultIsNotDefinedAreToldWithTheReason() {
      assertThatThrownBy(() -> Extremes.of(model("SQRT(x)", "x"), numbers(1), numbers(2)))
          .isInstanceOf(FormulaException.class)
          .hasMessage("SQRT(-1) is not defined.");
    }
  }
}
