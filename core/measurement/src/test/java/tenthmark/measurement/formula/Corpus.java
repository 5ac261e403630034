package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.analysis.differentiation.Gradient;

/**
 * Formulas with inputs, the same ones each time, to be computed both by the engine and by a real
 * Calc. Each case is one row: inputs in A to E, now and then a text or a blank cell in F, and the
 * formula in G.
 */
public final class Corpus {

  private static final String[] INPUTS = {"A", "B", "C", "D", "E"};

  private static final List<String> OVER_RANGES =
      List.of(
          "SUM(A#:E#)",
          "SUM(A#:F#)",
          "SUM($A#:B#;%s)",
          "AVERAGE(A#:F#)",
          "SUMSQ(A#:C#)",
          "PRODUCT(A#:C#)",
          "MIN(A#:F#)",
          "MAX(A#:F#;%s)",
          "COUNT(A#:F#)",
          "MEDIAN(A#:E#)",
          "STDEV(A#:F#)",
          "VAR(B#:E#)",
          "STDEVP(A#:E#)",
          "VARP(A#:E#)",
          "DEVSQ(A#:D#)",
          "SUMPRODUCT(A#:C#;C#:E#)",
          "SUMPRODUCT(A#:C#*C#:E#)",
          "SUMPRODUCT((A#:E#-AVERAGE(A#:E#))^2)",
          "SUMPRODUCT(A#:E#>%s)",
          "SUMPRODUCT(SQRT(ABS(A#:E#)))",
          "SUMXMY2(A#:C#;C#:E#)",
          "SLOPE(A#:D#;B#:E#)",
          "INTERCEPT(A#:D#;B#:E#)",
          "IF(F#=\"grip\";%s;%s)",
          "IF(F#=\"\";%s;%s)",
          "IFERROR(%s/F#;%s)",
          "IFERROR(A#/(B#-C#);%s)",
          "IFERROR(SQRT(%s);%s)",
          "IFNA(HLOOKUP(%s;A#:E#;1;0);%s)",
          "ISERROR(1/F#)*%s",
          "ISNUMBER(F#)+%s",
          "ISTEXT(F#)+%s",
          "ISBLANK(F#)-%s",
          "COUNTA(A#:F#)*%s",
          "INDEX(A#:E#;3)*%s",
          "INDEX(A#:E#;1;4)",
          "SUM(INDEX(A#:E#;1;0))",
          "CHOOSE(2;%s;%s;%s)",
          "CHOOSE(1.9;%s;%s)",
          "IFS(%s>%s;%s;%s>%s;%s;TRUE();%s)",
          "SWITCH(F#;\"grip\";%s;%s)",
          "VLOOKUP(A#;A#:E#;3;0)*%s",
          "HLOOKUP(C#;A#:E#;1;0)+%s",
          "MATCH(D#;A#:E#;0)+%s",
          "SUMIF(A#:E#;\">0\")",
          "SUMIF(A#:C#;\"<=1\";C#:E#)*%s",
          "SUMIF(A#:F#;\"grip\")",
          "COUNTIF(A#:F#;\"<1\")+%s",
          "COUNTIF(A#:F#;\"<>grip\")",
          "AVERAGEIF(A#:E#;\">-1\")",
          "SUMIFS(A#:C#;B#:D#;\">0\";C#:E#;\"<5\")",
          "COUNTIFS(A#:C#;\">0\";C#:E#;\"<5\")",
          "AVERAGEIFS(A#:C#;B#:D#;\">0\")",
          "LARGE(A#:E#;2)*%s",
          "SMALL(A#:F#;1)",
          "PERCENTILE(A#:E#;0.3)",
          "QUARTILE(A#:E#;3)",
          "FORECAST(%s;A#:D#;B#:E#)",
          "CORREL(A#:D#;B#:E#)",
          "RSQ(A#:D#;B#:E#)",
          "COVAR(A#:D#;B#:E#)",
          "AVEDEV(A#:E#)",
          "GEOMEAN(A#:B#)",
          "SUM(A#:B#~D#:E#)",
          "SUM(A#:C#!B#:D#)",
          "SUMPRODUCT(IF(A#:E#>0;A#:E#;%s))",
          "SUMPRODUCT(ISNUMBER(A#:F#)*1)",
          "SUMPRODUCT(IFERROR(1/A#:E#;0))");

  private static final double TAME = 3e-14;

  private Corpus() {}

  /**
   * One case.
   *
   * @param row its row, counted from 1
   * @param numbers what A to E hold
   * @param note what F holds; blank if empty
   * @param formula what G holds, in Calc's own notation
   */
  public record Case(int row, double[] numbers, String note, String formula) {

    /** The case as a document of its own. */
    public Grid grid() {
      Grid grid = new Grid();
      for (int i = 0; i < numbers.length; i++) {
        grid.put(INPUTS[i] + row, numbers[i]);
      }
      if (!note.isEmpty()) {
        grid.put("F" + row, note);
      }
      return grid.put("G" + row, formula);
    }

    /**
     * What the engine makes of it.
     *
     * @throws FormulaException if it is not defined
     */
    public double value() {
      return model().value(numbers);
    }

    /** Whether the result hardly changes if the last bit of each step does. */
    boolean isTame() {
      try {
        return Noisy.spread(model(), new Random(row), 20, numbers) < TAME;
      } catch (FormulaException undefined) {
        return true;
      }
    }

    /** Its value with its slopes along A to E, if it has them. */
    Optional<Linearised> linearised() {
      try {
        return Optional.of(model().linearised(numbers));
      } catch (FormulaException undefined) {
        return Optional.empty();
      }
    }

    /** The same slopes by another library; none where it lacks a step or a limit. */
    Optional<double[]> gradient() {
      Gradients field = new Gradients(numbers.length);
      List<Gradient> point = new ArrayList<>();
      for (int i = 0; i < numbers.length; i++) {
        point.add(field.input(i, numbers[i]));
      }
      try {
        return Optional.of(model().evaluate(field, point).getGradient())
            .filter(slopes -> Arrays.stream(slopes).allMatch(Double::isFinite));
      } catch (UnsupportedOperationException step) {
        return Optional.empty();
      }
    }

    private Model model() {
      return new Follower(new Formulas())
          .model(
              grid(),
              Grid.address("G" + row),
              Arrays.stream(INPUTS).map(column -> Grid.address(column + row)).toList());
    }
  }

  /**
   * So many cases. Those are left out in which a difference of one last bit somewhere in the middle
   * grows beyond what is to be compared, such as the cosine of a billion.
   */
  public static List<Case> cases(int count, long seed) {
    Random random = new Random(seed);
    List<Case> cases = new ArrayList<>();
    while (cases.size() < count) {
      Case next = next(cases.size() + 1, random);
      if (next.isTame()) {
        cases.add(next);
      }
    }
    return cases;
  }

  private static Case next(int row, Random random) {
    List<String> variables = List.of("A" + row, "B" + row, "$C" + row, "D$" + row, "E" + row);
    List<String> ranges =
        OVER_RANGES.stream().map(shape -> shape.replace("#", String.valueOf(row))).toList();
    RandomFormulas source = new RandomFormulas(random.nextLong(), variables, ranges);
    String note = random.nextInt(3) == 0 ? "grip" : "";
    return new Case(row, numbers(random), note, "=" + source.any());
  }

  private static double[] numbers(Random random) {
    double[] numbers = new double[INPUTS.length];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = number(random);
    }
    return numbers;
  }

  /** Numbers as a student reads them off: few digits, most of middling size. */
  private static double number(Random random) {
    double digits = random.nextInt(1999) - 999;
    return switch (random.nextInt(8)) {
      case 0 -> random.nextInt(21) - 10;
      case 1 -> digits / 1000;
      case 2 -> digits * 1e3;
      case 3 -> Double.parseDouble((int) digits + "e-6");
      default -> digits / 100;
    };
  }
}
