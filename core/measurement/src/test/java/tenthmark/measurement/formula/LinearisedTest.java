package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.differentiation.DSFactory;
import org.hipparchus.analysis.differentiation.FiniteDifferencesDifferentiator;
import org.hipparchus.analysis.differentiation.Gradient;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LinearisedTest {

  private static final List<String> NAMES = List.of("a", "b", "c", "d", "e");

  private final Formulas formulas = new Formulas();

  private Model model(String formula, String... names) {
    return new NamedModel(formulas.withNames(formula), List.of(names));
  }

  @Nested
  class SensitivityCoefficients {

    // elementary calculus: derivative of each function, evaluated by hand at a simple point
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "x^2 | 3 | 6",
          "x^3 | -2 | 12",
          "x^-1 | 2 | -0.25",
          "2^x | 3 | 5.545177444479562",
          "x^x | 1 | 1",
          "SQRT(x) | 4 | 0.25",
          "LN(x) | 4 | 0.25",
          "LOG10(x) | 1 | 0.4342944819032518",
          "LOG(x;2) | 1 | 1.4426950408889634",
          "LOG(8;x) | 2 | -2.1640425613334453",
          "EXP(x) | 0 | 1",
          "SIN(x) | 0 | 1",
          "COS(x) | 0 | 0",
          "TAN(x) | 0 | 1",
          "ATAN(x) | 1 | 0.5",
          "ATAN2(x;1) | 1 | -0.5",
          "ATAN2(1;x) | 1 | 0.5",
          "TANH(x) | 0 | 1",
          "LOG10(x) | 10 | 0.04342944819032518",
          "TAN(x) | 0.7853981633974483 | 2",
          "COT(x) | 0.7853981633974483 | -2",
          "ASIN(x) | 0.6 | 1.25",
          "ACOS(x) | 0.6 | -1.25",
          "ATAN(x) | 2 | 0.2",
          "ATAN2(x;4) | 3 | -0.16",
          "ATAN2(3;x) | 4 | 0.12",
          "SINH(x) | 0.6931471805599453 | 1.25",
          "COSH(x) | 0.6931471805599453 | 0.75",
          "TANH(x) | 0.6931471805599453 | 0.64",
          "ASINH(x) | 0.75 | 0.8",
          "ACOSH(x) | 1.25 | 1.3333333333333333",
          "ATANH(x) | 0.5 | 1.3333333333333333",
          "ABS(x) | -3 | -1",
          "DEGREES(x) | 1 | 57.29577951308232",
          "RADIANS(x) | 5 | 0.017453292519943295",
          "MIN(x;1) | -3 | 1",
          "MIN(1;x) | 3 | 0",
          "MAX(1;x) | 3 | 1",
          "MEDIAN(x;1;5) | 3 | 1",
          "MEDIAN(x;1;2;5) | 1.5 | 0.5",
          "MEDIAN(x;1;2;5;9) | 7 | 0",
          "x% | 5 | 0.01",
          "-x | 5 | -1",
          "1/x | 2 | -0.25",
          "x*x*x | 2 | 12",
          "(x+1)*(x-1) | 3 | 6",
          "MOD(x;3) | 7.5 | 1",
          "MOD(7.5;x) | 3 | -2",
          "IF(x>2;x^2;x) | 3 | 6",
          "IF(x>2;x^2;x) | 1 | 1",
          "IF(x>2;x^2;1/0) | 3 | 6",
          "MAX(x;1) | 3 | 1",
          "MAX(x;5) | 3 | 0",
          "MEDIAN(x;1;5) | 3 | 1",
          "MEDIAN(x;1;2;5) | 3 | 0.5",
          "x^0 | 3 | 0",
          "x^2 | 0 | 0",
          "x^1 | 0 | 1",
          "0^x | 2 | 0",
          "(-8*x)^(1/3) | 1 | -0.6666666666666666"
        })
    void followTheRules(String formula, double x, double expected) {
      assertThat(model(formula, "x").linearised(x).sensitivities()[0])
          .isCloseTo(expected, within(1e-14 * Math.max(1, Math.abs(expected))));
    }

    @Test
    void countAnInputOnceHoweverOftenItIsUsed() {
      assertThat(model("x*y/(x+y)", "x", "y").linearised(2, 3).sensitivities())
          .containsExactly(new double[] {9.0 / 25, 4.0 / 25}, within(1e-15));
      assertThat(model("x-x", "x").linearised(2).sensitivities()).containsExactly(0);
    }

    @Test
    void areExactForALinearModel() {
      Linearised linear = model("3*a-2*b+c/4-7", "a", "b", "c").linearised(1.1, 2.2, 3.3);
      assertThat(linear.sensitivities()).containsExactly(3, -2, 0.25);
    }
  }

  @Nested
  class NoSlope {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "ABS(x) | 0 | ABS(0)",
          "SQRT(x) | 0 | SQRT(0)",
          "SIGN(x) | 0 | SIGN(0)",
          "x^0.5 | 0 | 0^0.5",
          "ROUND(x;2) | 3.14159 | ROUND(3.14159; 2)",
          "INT(x) | 3.5 | INT(3.5)",
          "TRUNC(x) | 3.5 | TRUNC(3.5)",
          "IF(x>2;x;0) | 2 | 2>2",
          "IF(x=2;x;0) | 2 | 2=2",
          "IF(x;1;2) | 0 | 0<>0",
          "MIN(x;2) | 2 | MIN(2; 2)",
          "MEDIAN(x;2;3) | 2 | MEDIAN",
          "ASIN(x) | 1 | ASIN(1)",
          "MOD(x;2) | 4 | MOD(4; 2)",
          "(-2)^x | 2 | (-2)^2"
        })
    void isToldByTheStepThatHasNone(String formula, double x, String step) {
      assertThatThrownBy(() -> model(formula, "x").linearised(x))
          .isInstanceOf(FormulaException.class)
          .hasMessageContaining(step)
          .hasMessageContaining("no uncertainty can be carried through it");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ROUND(2.5;0)*x", "ABS(0)+x", "IF(2>2;0;x)", "IF(x>2;ABS(0*x);x)"})
    void doesNotMatterWhereNoInputIsConcerned(String formula) {
      assertThat(model(formula, "x").linearised(1).sensitivities()[0]).isNotZero();
    }
  }

  @Nested
  class NoValue {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "1/x | 0 | 1/0 is a division by zero.",
          "SQRT(x) | -4 | SQRT(-4) is not defined.",
          "LN(x) | 0 | LN(0) is not defined or too large.",
          "x^0.5 | -2 | (-2)^0.5 is not defined.",
          "EXP(x) | 1000 | EXP(1000) is not defined or too large.",
          "ACOS(x) | 2 | ACOS(2) is not defined.",
          "ATAN2(x;x) | 0 | ATAN2(0; 0) is not defined.",
          "MOD(1;x) | 0 | MOD(1; 0) is not defined.",
          "STDEV(x) | 1 | STDEV of 1 numbers is not defined; it needs more.",
          "GAMMA(x) | 1 | an uncertainty cannot be carried through the function GAMMA.",
          "x&\"a\" | 1 | joining of texts with & has no number as its result.",
          "x+\"a\" | 1 | the text \"a\" stands where a number is needed."
        })
    void isToldByTheStepThatHasNone(String formula, double x, String sentence) {
      assertThatThrownBy(() -> model(formula, "x").linearised(x)).hasMessage(sentence);
    }
  }

  @Nested
  @Tag("slow")
  class RandomFormulasAtRandomPoints {

    private static final int CASES = 3000;

    @Test
    void agreeWithHipparchusGradients() {
      RandomFormulas source = new RandomFormulas(20_031, NAMES, List.of());
      Random random = new Random(7);
      int compared = 0;
      for (int i = 0; i < CASES; i++) {
        String text = source.smooth();
        double[] point = point(random);
        Model model = new NamedModel(formulas.withNames(text), NAMES);
        Linearised ours = linearised(model, point);
        if (ours == null) {
          continue;
        }
        Gradients field = new Gradients(point.length);
        List<Gradient> inputs = new ArrayList<>();
        for (int k = 0; k < point.length; k++) {
          inputs.add(field.input(k, point[k]));
        }
        Gradient theirs = model.evaluate(field, inputs);
        compared++;
        assertThat(ours.value())
            .as(text + " at " + Arrays.toString(point))
            .isCloseTo(theirs.getValue(), within(1e-11 * size(theirs.getValue())));
        double largest = Arrays.stream(theirs.getGradient()).map(Math::abs).max().orElse(0);
        assertThat(ours.sensitivities())
            .as(text + " at " + Arrays.toString(point))
            .containsExactly(theirs.getGradient(), within(1e-10 * size(largest)));
      }
      assertThat(compared).isGreaterThan(CASES * 8 / 10);
    }

    @Test
    void agreeWithFiniteDifferencesOfEighthOrder() {
      RandomFormulas source = new RandomFormulas(20_032, NAMES, List.of());
      Random random = new Random(8);
      FiniteDifferencesDifferentiator differences = new FiniteDifferencesDifferentiator(9, 1e-3);
      DSFactory factory = new DSFactory(1, 1);
      int compared = 0;
      for (int i = 0; i < CASES; i++) {
        String text = source.smooth();
        double[] point = point(random);
        Model model = new NamedModel(formulas.withNames(text), NAMES);
        Linearised ours = linearised(model, point);
        if (ours == null || text.contains("IF") || text.contains("M") || text.contains("ABS")) {
          continue; // a step or corner within the differences' reach would spoil them
        }
        for (int k = 0; k < point.length; k++) {
          int along = k;
          UnivariateFunction alone =
              x -> {
                double[] moved = point.clone();
                moved[along] = x;
                return model.value(moved);
              };
          double slope =
              differences
                  .differentiate(alone)
                  .value(factory.variable(0, point[k]))
                  .getPartialDerivative(1);
          assertThat(ours.sensitivities()[k])
              .as(text + " along " + NAMES.get(k) + " at " + Arrays.toString(point))
              .isCloseTo(
                  slope, within(1e-7 * size(Math.max(Math.abs(slope), Math.abs(ours.value())))));
        }
        compared++;
      }
      assertThat(compared).isGreaterThan(500);
    }

    private Linearised linearised(Model model, double[] point) {
      try {
        Linearised linearised = model.linearised(point);
        boolean tame =
            Math.abs(linearised.value()) < 1e6
                && Arrays.stream(linearised.sensitivities()).allMatch(s -> Math.abs(s) < 1e4);
        return tame ? linearised : null;
      } catch (FormulaException undefined) {
        return null;
      }
    }

    private double[] point(Random random) {
      return random.doubles(NAMES.size(), -4, 4).map(x -> x + Math.signum(x) / 2).toArray();
    }

    private double size(double value) {
      return Math.max(1, Math.abs(value));
    }
  }
}
