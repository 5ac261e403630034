package tenthmark.measurement.carrying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.carrying.Distribution.NORMAL;
import static tenthmark.measurement.carrying.Distribution.RECTANGULAR;
import static tenthmark.measurement.carrying.Distribution.TRIANGULAR;
import static tenthmark.measurement.carrying.Models.model;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.measurement.formula.Model;

class SimulationTest {

  private static final int MILLION = 1_000_000;

  @Nested
  class AdditiveModel {

    private final Model sum = model("X1+X2+X3+X4", "X1", "X2", "X3", "X4");

    // JCGM 101:2008, 9.2.2 to 9.2.4, tables 2 to 4 (printed u and 95 % interval), from memory; the
    // last digit printed, and a little for another million draws
    @ParameterizedTest
    @CsvSource({
      "NORMAL, 1, 1, 2.00, 3.92, 0.01, 0.015",
      "RECTANGULAR, 1.7320508075688772, 1, 2.00, 3.88, 0.01, 0.015",
      "RECTANGULAR, 1.7320508075688772, 10, 10.1, 17.0, 0.05, 0.05"
    })
    void givesThePrintedInterval(
        Distribution distribution,
        double uncertainty,
        double lastIsTimes,
        double u,
        double end,
        double uWithin,
        double endWithin) {
      InputQuantity input = new InputQuantity(0, uncertainty, distribution);
      InputQuantity last = new InputQuantity(0, uncertainty * lastIsTimes, distribution);
      Simulation simulation = Simulation.run(sum, List.of(input, input, input, last), MILLION, 1);
      assertThat(simulation.mean()).isCloseTo(0, within(5 * u / Math.sqrt(MILLION)));
      assertThat(simulation.standardUncertainty()).isCloseTo(u, within(uWithin));
      assertThat(simulation.lower()).isCloseTo(-end, within(endWithin));
      assertThat(simulation.upper()).isCloseTo(end, within(endWithin));
    }
  }

  @Nested
  class MassCalibration {

    // JCGM 101:2008, 9.3, tables 5 and 6, from memory: by Monte Carlo 1.2341 mg, u 0.0754 mg,
    // [1.0834, 1.3825] mg; to first order 1.2340 mg, u 0.0539 mg; masses in mg, densities in kg/m^3
    private final Model model =
        model("(mR+dm)*(1+(a-1.2)*(1/W-1/R))-100000", "mR", "dm", "a", "W", "R");

    @Test
    void byMonteCarloGivesThePrintedInterval() {
      Simulation simulation =
          Simulation.run(
              model,
              List.of(
                  new InputQuantity(100_000, 0.050, NORMAL),
                  new InputQuantity(1.234, 0.020, NORMAL),
                  new InputQuantity(1.20, 0.10, RECTANGULAR),
                  new InputQuantity(8000, 1000, RECTANGULAR),
                  new InputQuantity(8000, 50, RECTANGULAR)),
              MILLION,
              1);
      assertThat(simulation.mean()).isCloseTo(1.2341, within(0.0004));
      assertThat(simulation.standardUncertainty()).isCloseTo(0.0754, within(0.0003));
      // the ends printed are of the shortest interval, which lies 0.0007 mg lower than the
      // symmetric
      assertThat(simulation.upper() - simulation.lower())
          .isCloseTo(1.3825 - 1.0834, within(0.0005));
      assertThat(simulation.lower()).isCloseTo(1.0834, within(0.0015));
    }

    @Test
    void toFirstOrderGivesThePrintedSmallerUncertainty() {
      double root = Math.sqrt(3);
      Carried carried =
          Carried.through(
              model,
              new double[] {100_000, 1.234, 1.20, 8000, 8000},
              new double[] {0.050, 0.020, 0.10 / root, 1000 / root, 50 / root});
      assertThat(carried.value()).isCloseTo(1.2340, within(5e-5));
      assertThat(carried.uncertainty(new Quadrature())).isCloseTo(0.0539, within(5e-5));
    }
  }

  @Nested
  class Seeds {

    private final Model model = model("a*b^2", "a", "b");
    private final List<InputQuantity> inputs =
        List.of(
            new InputQuantity(0.42, 0.005, RECTANGULAR), new InputQuantity(0.31, 0.01, TRIANGULAR));

    @Test
    void giveTheSameOutcomeAgain() {
      assertThat(Simulation.run(model, inputs, 100_000, 7))
          .isEqualTo(Simulation.run(model, inputs, 100_000, 7))
          .isNotEqualTo(Simulation.run(model, inputs, 100_000, 8));
    }

    @Test
    void giveTheSameOutcomeOnAnyNumberOfProcessors() throws Exception {
      Simulation alone =
          new ForkJoinPool(1).submit(() -> Simulation.run(model, inputs, 100_000, 7)).get();
      Simulation shared =
          new ForkJoinPool(8).submit(() -> Simulation.run(model, inputs, 100_000, 7)).get();
      assertThat(alone).isEqualTo(shared);
    }
  }

  @Nested
  @Tag("slow")
  class SecondOpinions {

    private final Random random = new Random(41);

    // independence of linear models from the shape: JCGM 100:2008, 5.1.2; the bounds are five
    // standard deviations of the estimates
    @ParameterizedTest
    @EnumSource(Distribution.class)
    void firstOrderForLinearModels(Distribution distribution) {
      double divisor =
          switch (distribution) {
            case RECTANGULAR -> Math.sqrt(3);
            case TRIANGULAR -> Math.sqrt(6);
            case NORMAL -> 1;
          };
      Model linear = model("3*a-2*b+c/4-7", "a", "b", "c");
      for (int i = 0; i < 10; i++) {
        double[] values = random.doubles(3, -5, 5).toArray();
        double[] sizes = random.doubles(3, 0.01, 1).toArray();
        int samples = 100_000;
        Simulation simulation =
            Simulation.run(linear, inputs(values, sizes, distribution), samples, i);
        Carried carried =
            Carried.through(linear, values, Arrays.stream(sizes).map(u -> u / divisor).toArray());
        double u = carried.uncertainty(new Quadrature());
        assertThat(simulation.mean())
            .isCloseTo(carried.value(), within(5 * u / Math.sqrt(samples)));
        assertThat(simulation.standardUncertainty())
            .isCloseTo(u, within(5 * u / Math.sqrt(2.0 * samples)));
      }
    }

    @Test
    void hipparchusQuantilesOfJavasGeneratorForACurvedModel() {
      Model curved = model("a^2*SQRT(b)/(c+a)", "a", "b", "c");
      double[] values = {2, 3, 1};
      double[] sizes = {0.2, 0.5, 0.3};
      Simulation ours = Simulation.run(curved, inputs(values, sizes, RECTANGULAR), MILLION, 3);
      SplittableRandom java = new SplittableRandom(99);
      double[] results = new double[400_000];
      for (int i = 0; i < results.length; i++) {
        double a = values[0] + sizes[0] * (2 * java.nextDouble() - 1);
        double b = values[1] + sizes[1] * (2 * java.nextDouble() - 1);
        double c = values[2] + sizes[2] * (2 * java.nextDouble() - 1);
        results[i] = a * a * Math.sqrt(b) / (c + a);
      }
      double u = Math.sqrt(StatUtils.variance(results));
      assertThat(ours.mean()).isCloseTo(StatUtils.mean(results), within(0.01 * u));
      assertThat(ours.standardUncertainty()).isCloseTo(u, within(0.01 * u));
      assertThat(ours.lower()).isCloseTo(StatUtils.percentile(results, 2.5), within(0.02 * u));
      assertThat(ours.upper()).isCloseTo(StatUtils.percentile(results, 97.5), within(0.02 * u));
    }

    @ParameterizedTest
    @EnumSource(Distribution.class)
    void hipparchusDistributionsOfTheDraws(Distribution distribution) {
      RealDistribution theirs =
          switch (distribution) {
            case RECTANGULAR -> new UniformRealDistribution(2, 8);
            case TRIANGULAR -> new TriangularDistribution(2, 5, 8);
            case NORMAL -> new NormalDistribution(5, 3);
          };
      UniformRandomProvider source = RandomSource.XO_RO_SHI_RO_128_PP.create(17L);
      double[] drawn = new InputQuantity(5, 3, distribution).draw(20_000, source);
      assertThat(new KolmogorovSmirnovTest().kolmogorovSmirnovTest(theirs, drawn))
          .isGreaterThan(0.01);
    }

    private List<InputQuantity> inputs(double[] values, double[] sizes, Distribution distribution) {
      return IntStream.range(0, values.length)
          .mapToObj(i -> new InputQuantity(values[i], sizes[i], distribution))
          .toList();
    }
  }

  @Nested
  class Interval {

    // JCGM 101:2008, 7.7.2: of M sorted results the ends are number r and r + q, q = 0.95 M
    // rounded,
    // r = (M - q)/2 rounded
    @ParameterizedTest
    @CsvSource({"1000, 25, 975", "100, 3, 98", "10, 1, 10", "20, 1, 20"})
    void takesTheResultsAtThePrescribedPlaces(int samples, int lower, int upper) {
      Model identity = model("x", "x");
      InputQuantity input = new InputQuantity(0, 1, RECTANGULAR);
      double[] drawn =
          input.draw(
              samples,
              ((JumpableUniformRandomProvider) RandomSource.XO_RO_SHI_RO_128_PP.create(5L)).jump());
      Arrays.sort(drawn);
      Simulation simulation = Simulation.run(identity, List.of(input), samples, 5);
      assertThat(simulation.lower()).isEqualTo(drawn[lower - 1]);
      assertThat(simulation.upper()).isEqualTo(drawn[upper - 1]);
    }
  }

  @Nested
  class UndefinedSamples {

    @Test
    void areCountedAndOneIsExplained() {
      Model root = model("SQRT(x)", "x");
      assertThatThrownBy(
              () ->
                  Simulation.run(root, List.of(new InputQuantity(0.1, 1, RECTANGULAR)), 10_000, 1))
          .hasMessageMatching(
              "in 4\\d\\d\\d of 10000 samples the result is not defined; in one of them:"
                  + " SQRT\\(-0\\.\\d+\\) is not defined\\.");
    }

    @Test
    void doNotAriseInABranchNotTaken() {
      Model guarded = model("IF(x>0;SQRT(x);0)", "x");
      assertThat(
              Simulation.run(guarded, List.of(new InputQuantity(0.1, 1, RECTANGULAR)), 10_000, 1)
                  .lower())
          .isZero();
    }
  }
}
