package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellModelTest {

  private final Follower follower = new Follower(new Formulas());

  private CellModel model(Grid grid, String result, String... inputs) {
    return follower.model(
        grid, Grid.address(result), Arrays.stream(inputs).map(Grid::address).toList());
  }

  private double sensitivity(Grid grid, String result, String input, double at) {
    return model(grid, result, input).linearised(at).sensitivities()[0];
  }

  @Nested
  class Following {

    @Test
    void goesThroughIntermediateCellsAndOtherSheets() {
      Grid grid =
          new Grid()
              .put("B1", "=Timing.B3^2*B2")
              .put("B2", "=4*PI()^2")
              .put("Timing.B3", "=B4/10")
              .put("Timing.B4", 14.2);
      CellModel model = model(grid, "B1", "Timing.B4");
      assertThat(model.value(14.2)).isCloseTo(4 * Math.PI * Math.PI * 1.42 * 1.42, within(1e-13));
      assertThat(model.between()).containsExactly(Grid.address("Timing.B3"), Grid.address("B1"));
    }

    @Test
    void takesTheFullDerivativeOfAnInputReachedByTwoPaths() {
      Grid grid =
          new Grid().put("A1", 3).put("A2", "=A1^2").put("A3", "=A1+1").put("A4", "=A2*A3+A1");
      assertThat(sensitivity(grid, "A4", "A1", 3)).isEqualTo(3 * 9 + 2 * 3 + 1);
    }

    @Test
    void stopsAtAnInputThatHoldsAFormula() {
      Grid grid = new Grid().put("A1", 2).put("A2", "=A1*5").put("A3", "=A2+A1");
      CellModel model = model(grid, "A3", "A2");
      assertThat(model.linearised(10).sensitivities()).containsExactly(1);
      assertThat(model.value(10)).isEqualTo(12);
    }

    @Test
    void resolvesNames() {
      Grid grid =
          new Grid()
              .name("period", "$Timing.$B$2")
              .name("runs", "$C$1:$C$3")
              .put("Timing.B2", 2)
              .put("C1", 1)
              .put("C2", 2)
              .put("C3", 6)
              .put("A1", "=Period^2+AVERAGE(runs)");
      CellModel model = model(grid, "A1", "Timing.B2", "C3");
      assertThat(model.value(2, 6)).isEqualTo(7);
      assertThat(model.linearised(2, 6).sensitivities())
          .containsExactly(new double[] {4, 1.0 / 3}, within(1e-15));
    }

    @Test
    void readsFormulasAsFilesStoreThem() {
      Grid grid =
          new Grid()
              .put("B4", 2)
              .put("B5", 3)
              .put("A1", "of:=[.B4]*SUM([$Sheet1.B4:.B5])")
              .put("A2", "=Sheet1!B4*SUM($B$4:B5)");
      assertThat(sensitivity(grid, "A1", "B4", 2)).isEqualTo(7);
      assertThat(sensitivity(grid, "A2", "B4", 2)).isEqualTo(7);
    }

    @Test
    void knowsWhichInputsMatter() {
      Grid grid = new Grid().put("A1", 1).put("A2", 2).put("A3", "=A1*2");
      CellModel model = model(grid, "A3", "A1", "A2");
      assertThat(model.reaches(0)).isTrue();
      assertThat(model.reaches(1)).isFalse();
      assertThat(model.linearised(1, 2).sensitivities()).containsExactly(2, 0);
    }

    @Test
    @Tag("slow")
    void managesAChainOfTwentyThousandCells() {
      Grid grid = new Grid().put("A1", 1);
      for (int row = 2; row <= 20_000; row++) {
        grid.put("A" + row, "=A" + (row - 1) + "+1");
      }
      CellModel model = model(grid, "A20000", "A1");
      assertThat(model.value(1)).isEqualTo(20_000);
      assertThat(model.linearised(1).sensitivities()).containsExactly(1);
    }

    @Test
    void computesEachCellOnceThoughPathsDouble() {
      Grid grid = new Grid().put("A1", 1);
      for (int row = 2; row <= 60; row++) {
        grid.put("A" + row, "=(A" + (row - 1) + "+A" + (row - 1) + ")/2");
      }
      assertThat(sensitivity(grid, "A60", "A1", 1)).isEqualTo(1);
    }

    @Test
    void managesAMeanOfTenThousandReadings() {
      Grid grid = new Grid().put("B1", "=AVERAGE(A:A)");
      String[] cells =
          IntStream.rangeClosed(1, 10_000).mapToObj(i -> "A" + i).toArray(String[]::new);
      for (String cell : cells) {
        grid.put(cell, 7);
      }
      Grid used = grid.usedRows(10_000);
      double[] sevens = new double[10_000];
      Arrays.fill(sevens, 7);
      double[] sensitivities = model(used, "B1", cells).linearised(sevens).sensitivities();
      assertThat(sensitivities).hasSize(10_000).containsOnly(1e-4);
    }
  }

  @Nested
  class RangesAsInCalc {

    // measured in LibreOffice 7.4.7: text and blank cells do not count in ranges
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=SUM(A1:A4) | 5",
          "=AVERAGE(A1:A4) | 2.5",
          "=COUNT(A1:A4) | 2",
          "=PRODUCT(A1:A4) | 6",
          "=MIN(A1:A4) | 2",
          "=MAX(A3:A4) | 0",
          "=SUMSQ(A1:A4) | 13",
          "=SUM(A3) | 0",
          "=A4+1 | 1",
          "=SUMPRODUCT(A1:A4;B1:B4) | 29",
          "=SUMPRODUCT((A1:A2-AVERAGE(A1:A2))^2) | 0.5",
          "=SUMPRODUCT(A1:A2*B1:B2) | 29",
          "=SUMPRODUCT(A1:A2>2) | 1",
          "=SUMPRODUCT(SQRT(B1:B2*B1:B2)) | 11",
          "=SUMXMY2(A1:A2;B1:B2) | 20",
          "=SUMXMY2(A1:A2;A4:A5) | 13",
          "=SLOPE(B1:B3;A1:A3) | 3",
          "=INTERCEPT(B1:B3;A1:A3) | -2",
          "=MEDIAN(A1:B4) | 4.5",
          "=A3=\"marks\" | 1",
          "=A3<>\"grip\" | 1",
          "=A4=\"\" | 1",
          "=A1<\"a\" | 1",
          "=IF(A3=\"marks\";A1;1/0) | 2",
          "=AND(A1:A2) | 1",
          "=AVERAGE(A1;;B1) | 2",
          "=COUNT(A1;;B1) | 3",
          "=POWER(2;) | 1"
        })
    void skipTextAndBlankCells(String formula, double expected) {
      Grid grid =
          new Grid()
              .put("A1", 2)
              .put("A2", 3)
              .put("A3", "marks")
              .put("B1", 4)
              .put("B2", 7)
              .put("B3", 5)
              .put("B4", 6)
              .put("C1", formula);
      double value = model(grid, "C1").value();
      assertThat(value).isCloseTo(expected, within(1e-14));
    }
  }

  @Nested
  class ConditionsThatGiveTexts {

    private final Grid grid =
        new Grid()
            .put("A1", 2)
            .put("B1", "=IF(A1>1;\"fine\";\"wide\")")
            .put("B2", "=A1*3")
            .put("C1", "=SUM(B1:B2)")
            .put("C2", "=IF(B1=\"fine\";A1^2;A1)")
            .put("C3", "=SUM(IF(A1>1;B1:B2;A1:A2))");

    @ParameterizedTest
    @CsvSource({"C1, 3", "C2, 4", "C3, 3"})
    void areTexts(String result, double expected) {
      assertThat(sensitivity(grid, result, "A1", 2)).isEqualTo(expected);
    }

    @Test
    void countAsNumbersOnlyWhereTheyAre() {
      grid.put("A2", "=SQRT(A1-2)").put("C4", "=COUNT(A1:B2)*A1");
      assertThat(sensitivity(grid, "C4", "A1", 2)).isEqualTo(3);
    }
  }

  @Nested
  class CellsThatTheEngineCannotCompute {

    @Test
    void areTakenAsShownIfNoInputLiesBehindThem() {
      Grid grid =
          new Grid()
              .put("A1", 2)
              .put("B1", "=VLOOKUP(\"steel\";D1:E9;2)")
              .shows("B1", 7.85)
              .put("A2", "=A1*B1");
      assertThat(sensitivity(grid, "A2", "A1", 2)).isEqualTo(7.85);
    }

    @Test
    void areRefusedByNameIfAnInputLiesBehindThem() {
      Grid grid =
          new Grid().put("A1", 2).put("B1", "=GAMMA(A1)").shows("B1", 1).put("A2", "=A1*B1");
      assertThatThrownBy(() -> sensitivity(grid, "A2", "A1", 2))
          .hasMessage("cell B1: an uncertainty cannot be carried through the function GAMMA.");
    }

    @Test
    void areRefusedIfTheyHideWhatTheyReferTo() {
      Grid grid =
          new Grid().put("A1", 2).put("B1", "=INDIRECT(\"A1\")").shows("B1", 2).put("A2", "=A1*B1");
      assertThatThrownBy(() -> sensitivity(grid, "A2", "A1", 2)).hasMessageContaining("INDIRECT");
    }

    @Test
    void doNotMatterInABranchNotTaken() {
      Grid grid =
          new Grid()
              .put("A1", 2)
              .put("B1", "=GAMMA(A1)")
              .put("B2", "=1/0")
              .put("A2", "=IF(A1>1;A1^2;B1+B2)");
      assertThat(sensitivity(grid, "A2", "A1", 2)).isEqualTo(4);
    }
  }

  @Nested
  class Mistakes {

    @Test
    void nameTheCellsOfACircle() {
      Grid grid = new Grid().put("A1", "=A2").put("A2", "=B3+1").put("B3", "=A2*2");
      assertThatThrownBy(() -> model(grid, "A1", "C1"))
          .hasMessage("cells refer to each other in a circle: A2, B3, A2.");
    }

    @Test
    void nameTheCellWhereTheTroubleIs() {
      Grid grid =
          new Grid()
              .put("A1", 4)
              .put("Timing.A2", "=Sheet1.A1-5")
              .put("Timing.A3", "=SQRT(A2)")
              .put("A4", "=Timing.A3*2");
      assertThatThrownBy(() -> model(grid, "A4", "A1").value(4))
          .hasMessage("cell Timing.A3: SQRT(-1) is not defined.");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "A2 | cell A2 holds no formula, so nothing is carried through it.",
          "A1 | cell A1 is both result and input.",
          "B9 | cell B9 holds no formula, so nothing is carried through it."
        })
    void includeAResultWithoutFormula(String result, String sentence) {
      Grid grid = new Grid().put("A1", 4).put("A2", 5);
      assertThatThrownBy(() -> model(grid, result, "A1")).hasMessage(sentence);
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=A1*A2 | cell C1: the text \"2 mm\" stands where a number is needed.",
          "=A1*A3 | cell A3: it holds the error #DIV/0!.",
          "=SUM(A1:A3) | cell A3: it holds the error #DIV/0!.",
          "=A1*grip | cell C1: grip is not a name that this workbook defines.",
          "=A1*A1:A2 | cell C1: a range stands where a single number is needed.",
          "=SUMXMY2(A1:A2;B1:B2) | cell C1: the text \"2 mm\" stands where a number is needed.",
          "=A1*(2 | cell C1: the formula ends too early.",
          "=SUMPRODUCT(A1:A2;B1:B3) | cell C1: SUMPRODUCT needs ranges of one size.",
          "=A2=\"2 MM\" | cell C1: the texts \"2 mm\" and \"2 MM\" differ only in capital letters; whether they count as equal depends on the document."
        })
    void nameTheCellAndTheReason(String formula, String sentence) {
      Grid grid =
          new Grid().put("A1", 4).put("A2", "2 mm").fault("A3", "#DIV/0!").put("C1", formula);
      assertThatThrownBy(() -> model(grid, "C1", "A1").value(4)).hasMessage(sentence);
    }

    @Test
    void includeARangeBeyondMeasure() {
      Grid grid = new Grid().put("A1", "=SUM(B1:Z9000)");
      assertThatThrownBy(() -> model(grid, "A1", "B1").value(1))
          .hasMessage("cell A1: the result is computed from more than 200000 cells.");
    }
  }

  @Nested
  class NumbersOfInputs {

    @Test
    void areTypedComputedOrShown() {
      Grid grid =
          new Grid()
              .put("A1", 4)
              .put("A2", "=A1/8")
              .put("A3", "=LAB_REPEATS(B1:B9)")
              .shows("A3", 0.02);
      assertThat(follower.numbers(grid, new CellRange(Grid.SHEET, 0, 0, 0, 3)))
          .containsExactly(
              OptionalDouble.of(4),
              OptionalDouble.of(0.5),
              OptionalDouble.of(0.02),
              OptionalDouble.empty());
    }

    @Test
    void areRefusedByCell() {
      Grid grid = new Grid().put("A1", "12 mm").put("B1", "=SQRT(-1)");
      assertThatThrownBy(() -> follower.numbers(grid, new CellRange(Grid.SHEET, 0, 0, 0, 0)))
          .hasMessage("cell A1: the text \"12 mm\" stands where a number is needed.");
      assertThatThrownBy(() -> follower.numbers(grid, new CellRange(Grid.SHEET, 1, 0, 1, 0)))
          .hasMessage("cell B1: SQRT(-1) is not defined.");
    }
  }

  @Nested
  class ManySamples {

    @Test
    void giveWhatOneByOneGives() {
      RandomFormulas source = new RandomFormulas(5, List.of("A1", "A2", "A3"), List.of());
      java.util.Random random = new java.util.Random(6);
      for (int i = 0; i < 200; i++) {
        Grid grid = new Grid().put("B1", "=" + source.any());
        CellModel model = model(grid, "B1", "A1", "A2", "A3");
        List<double[]> samples =
            IntStream.range(0, 3).mapToObj(k -> random.doubles(20, -3, 3).toArray()).toList();
        double[] values = model.values(samples, 20);
        for (int k = 0; k < 20; k++) {
          int sample = k;
          double alone = alone(model, samples.stream().mapToDouble(s -> s[sample]).toArray());
          assertThat(values[k])
              .as(grid.at(Grid.address("B1")).toString())
              .isEqualTo(Double.valueOf(alone));
        }
      }
    }

    private double alone(Model model, double[] inputs) {
      try {
        return model.value(inputs);
      } catch (FormulaException undefined) {
        return Double.NaN;
      }
    }
  }
}
