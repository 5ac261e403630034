package tenthmark.measurement.carrying;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.arrays.Selection;
import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.hipparchus.stat.StatUtils;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Model;
import tenthmark.measurement.wording.Message;

/**
 * The result of propagating distributions by Monte Carlo (JCGM 101:2008, clause 7).
 *
 * @param mean average of the results (7.6)
 * @param standardUncertainty their standard deviation (7.6)
 * @param lower lower end of the probabilistically symmetric 95 % interval (7.7)
 * @param upper upper end of it
 */
public record Simulation(double mean, double standardUncertainty, double lower, double upper) {

  /** The factor that expands the standard uncertainty to half of the interval; 0 without one. */
  public double coverageFactor() {
    return standardUncertainty == 0 ? 0 : (upper - lower) / 2 / standardUncertainty;
  }

  /** Samples worked off together. */
  private static final int CHUNK = 2048;

  private static final double PROBABILITY = 0.95;

  /** The inputs of so many samples, one array for each input. */
  private interface Draw {
    List<double[]> inputs(int samples, UniformRandomProvider random);
  }

  /** How many samples of a chunk are undefined, and the inputs of the last of them. */
  private record Outcome(int undefined, double[] where) {}

  /**
   * Draws the inputs independently and computes the result of each draw. The same seed gives the
   * same outcome on any number of processors: each chunk has its own part of the generator's
   * sequence.
   *
   * @param samples at least 2
   * @throws FormulaException if a result is not defined
   */
  public static Simulation run(Model model, List<InputQuantity> inputs, int samples, long seed) {
    return run(
        model,
        (size, random) -> inputs.stream().map(input -> input.draw(size, random)).toList(),
        samples,
        seed);
  }

  /**
   * The same for inputs that are correlated, by a normal distribution of all of them together (JCGM
   * 101:2008, 6.4.8).
   *
   * @param inputs all with a normal distribution
   */
  public static Simulation correlated(
      Model model, List<InputQuantity> inputs, Correlations correlations, int samples, long seed) {
    double[][] root = correlations.root();
    return run(model, (size, random) -> drawn(inputs, root, size, random), samples, seed);
  }

  private static List<double[]> drawn(
      List<InputQuantity> inputs, double[][] root, int size, UniformRandomProvider random) {
    double[][] independent = new double[inputs.size()][size];
    for (double[] one : independent) {
      Distribution.NORMAL.fill(one, 0, 1, random);
    }
    return IntStream.range(0, root.length)
        .mapToObj(i -> inputs.get(i).at(mixed(independent, root[i])))
        .toList();
  }

  private static double[] mixed(double[][] independent, double[] shares) {
    double[] mixed = new double[independent[0].length];
    for (int j = 0; j < shares.length; j++) {
      for (int sample = 0; sample < mixed.length; sample++) {
        mixed[sample] += shares[j] * independent[j][sample];
      }
    }
    return mixed;
  }

  private static Simulation run(Model model, Draw draw, int samples, long seed) {
    double[] results = new double[samples];
    List<UniformRandomProvider> generators = generators((samples + CHUNK - 1) / CHUNK, seed);
    List<Outcome> outcomes =
        IntStream.range(0, generators.size())
            .parallel()
            .mapToObj(chunk -> compute(model, draw, generators.get(chunk), results, chunk))
            .toList();
    requireDefined(model, outcomes, samples);
    return summary(results);
  }

  private static List<UniformRandomProvider> generators(int count, long seed) {
    JumpableUniformRandomProvider source =
        (JumpableUniformRandomProvider) RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    return Stream.generate(source::jump).limit(count).toList();
  }

  private static Outcome compute(
      Model model, Draw draw, UniformRandomProvider random, double[] results, int chunk) {
    int from = chunk * CHUNK;
    int size = Math.min(CHUNK, results.length - from);
    List<double[]> drawn = draw.inputs(size, random);
    double[] part = model.values(drawn, size);
    System.arraycopy(part, 0, results, from, size);
    return outcome(part, drawn);
  }

  private static Outcome outcome(double[] results, List<double[]> inputs) {
    int undefined = 0;
    double[] where = null;
    for (int i = 0; i < results.length; i++) {
      if (Double.isNaN(results[i])) {
        undefined++;
        int sample = i;
        where =
            inputs.stream().mapToDouble(input -> input[input.length == 1 ? 0 : sample]).toArray();
      }
    }
    return new Outcome(undefined, where);
  }

  private static void requireDefined(Model model, List<Outcome> outcomes, int samples) {
    int undefined = outcomes.stream().mapToInt(Outcome::undefined).sum();
    if (undefined > 0) {
      double[] where =
          outcomes.stream().map(Outcome::where).filter(Objects::nonNull).findFirst().orElseThrow();
      throw FormulaException.of("formula.samples", undefined, samples, reason(model, where));
    }
  }

  private static Message reason(Model model, double[] where) {
    try {
      model.value(where);
      throw new IllegalStateException("defined alone but not among samples");
    } catch (FormulaException reason) {
      return reason.said();
    }
  }

  private static Simulation summary(double[] results) {
    double mean = StatUtils.mean(results);
    double deviation = Math.sqrt(StatUtils.variance(results, mean));
    int count = results.length;
    int covered = (int) Math.floor(PROBABILITY * count + 0.5);
    int lower = Math.max(1, (count - covered + 1) / 2);
    int upper = Math.min(count, lower + covered);
    Selection.select(results, new int[] {lower - 1, upper - 1});
    return new Simulation(mean, deviation, results[lower - 1], results[upper - 1]);
  }
}
