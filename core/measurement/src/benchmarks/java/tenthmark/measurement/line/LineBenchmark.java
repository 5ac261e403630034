package tenthmark.measurement.line;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A line through 10,000 points: wanted under 50 ms with errors in both variables. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class LineBenchmark {

  private final List<Point> points = points(new Random(1));

  private static List<Point> points(Random random) {
    return IntStream.range(0, 10_000)
        .mapToObj(
            i -> {
              double x = 100 * random.nextDouble();
              double ux = 0.5 + random.nextDouble();
              double uy = 1 + 2 * random.nextDouble();
              return new Point(
                  x + ux * random.nextGaussian(), 3 + 2 * x + uy * random.nextGaussian(), ux, uy);
            })
        .toList();
  }

  /** Errors in both variables. */
  @Benchmark
  public Line byUncertainties() {
    return LineFit.byUncertainties(points, false);
  }

  /** No uncertainties. */
  @Benchmark
  public Line byScatter() {
    return LineFit.byScatter(points, false);
  }
}
