package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.call;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;
import static tenthmark.measurement.functions.Calls.row;
import static tenthmark.measurement.functions.Calls.table;
import static tenthmark.measurement.functions.Labels.labelled;
import static tenthmark.measurement.functions.Labels.sentence;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Effort;
import tenthmark.measurement.formula.Grid;

/** The functions that follow a formula in a cell. Students and numbers are invented. */
class LabCarryTest {

  /** A pendulum made of a crank arm: length in m, period in s, and g from them. */
  private final Grid sheet =
      new Grid()
          .put("B2", 0.172)
          .put("B3", 0.833)
          .put("B5", "=4*PI()^2*B2/B3^2")
          .put("B6", "=SQRT(B5)")
          .put("B7", "='Spare'.A1+1")
          .put("B8", 9.81)
          .put("B9", "9.81 m/s²")
          .put("B10", "=ROUND(B5;1)")
          .put("B11", "=B12")
          .put("B12", "=B11")
          .put("B13", "=SQRT(B2-1)");

  private Value cells(String from, String to) {
    CellAddress first = Grid.address(from);
    CellAddress last = Grid.address(to);
    return new Value.Reference(
        new CellBlock(
            new CellRange(first.sheet(), first.column(), first.row(), last.column(), last.row()),
            sheet));
  }

  private Value cell(String cell) {
    return cells(cell, cell);
  }

  private static final Value SIZES = column(0.001, 0.004);

  @Nested
  class Carry {

    // |c| u by hand: g (uL/L + 2 uT/T), the rule for a product of powers
    @Test
    void combinesStraightIfNotAskedOtherwise() {
      double g = 4 * Math.PI * Math.PI * 0.172 / (0.833 * 0.833);
      double relative = 0.001 / 0.172 + 2 * 0.004 / 0.833;
      assertThat(number("LAB_CARRY", cell("B5"), cells("B2", "B3"), SIZES))
          .isCloseTo(g * relative, within(1e-14));
    }

    @Test
    void combinesInQuadrature() {
      double g = 4 * Math.PI * Math.PI * 0.172 / (0.833 * 0.833);
      double relative = Math.hypot(0.001 / 0.172, 2 * 0.004 / 0.833);
      assertThat(number("LAB_CARRY", cell("B5"), cells("B2", "B3"), SIZES, "quadrature"))
          .isCloseTo(g * relative, within(1e-14));
    }

    @Test
    void takesCorrelations() {
      Value same = table(row(1, 1), row(1, 1));
      double g = 4 * Math.PI * Math.PI * 0.172 / (0.833 * 0.833);
      assertThat(number("LAB_CARRY", cell("B5"), cells("B2", "B3"), SIZES, "quadrature", same))
          .isCloseTo(g * (2 * 0.004 / 0.833 - 0.001 / 0.172), within(1e-14));
    }

    @Test
    void followsIntermediateCells() {
      double g = 4 * Math.PI * Math.PI * 0.172 / (0.833 * 0.833);
      double relative = 0.001 / 0.172 + 2 * 0.004 / 0.833;
      assertThat(number("LAB_CARRY", cell("B6"), cells("B2", "B3"), SIZES))
          .isCloseTo(Math.sqrt(g) * relative / 2, within(1e-14));
    }

    @Test
    void takesUncertaintiesInARowForInputsInAColumn() {
      assertThat(number("LAB_CARRY", cell("B5"), cells("B2", "B3"), table(row(0.001, 0.004))))
          .isEqualTo(number("LAB_CARRY", cell("B5"), cells("B2", "B3"), SIZES));
    }

    @Test
    void skipsACellThatIsBlankWithItsUncertainty() {
      Value correlations = table(row(1, null, 0), row(null, null, null), row(0, null, 1));
      sheet.put("C2", 2).put("C4", 3).put("C5", "=C2*C4");
      assertThat(number("LAB_CARRY", cell("C5"), cells("C2", "C4"), column(0.1, null, 0.2)))
          .isCloseTo(0.3 + 0.4, within(1e-15));
      assertThat(
              number(
                  "LAB_CARRY",
                  cell("C5"),
                  cells("C2", "C4"),
                  column(0.1, null, 0.2),
                  "quadrature",
                  correlations))
          .isCloseTo(0.5, within(1e-15));
    }

    @Test
    void isZeroForExactInputs() {
      assertThat(number("LAB_CARRY", cell("B5"), cells("B2", "B3"), column(0, 0))).isZero();
    }
  }

  @Nested
  class BadArguments {

    /** What cannot be read or followed is the reason, not that no input was found in it. */
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=B2*(B3 | cell C1: the formula ends too early.",
          "=GAMMA(B2*B3) | cell C1: an uncertainty cannot be carried through the function GAMMA.",
          "=nowhere*B2 | cell C1: nowhere is not a name that this workbook defines.",
          "=C2*2 | cell C2: the formula ends too early.",
          "=7*6 | the formula uses none of the inputs B2, B3."
        })
    void nameTheReasonThatStopsTheFormula(String formula, String sentence) {
      sheet.put("C1", formula).put("C2", "=B2*(");
      assertThat(fault("LAB_CARRY", cell("C1"), cells("B2", "B3"), SIZES))
          .isEqualTo("LAB_CARRY: " + sentence);
    }

    @Test
    void includeAnInputThatIsCalculatedFromAnother() {
      String sentence =
          "input C2 is calculated from input C1, so that both err together; leave one of them out,"
              + " or give correlations where the function takes them.";
      sheet.put("C1", 3).put("C2", "=C1/2").put("C3", "=C1*C2");
      for (String function :
          List.of("LAB_CARRY", "LAB_CARRYTABLE", "LAB_EXTREMES", "LAB_SIMULATE")) {
        assertThat(Calls.said(function, cell("C3"), cells("C1", "C2"), column(0.1, 0.05)))
            .isEqualTo(function + ": " + sentence);
      }
    }

    /** A hundred of a million draws each, as one column of a careless workbook has them. */
    @Test
    void endLongCalculationsThatAreTooManyTogether() {
      sheet.put("C1", 3).put("C2", 5).put("C3", "=C1*C2+SQRT(C1)+SQRT(C2)");
      sheet.effort().spend(Effort.MOST - 5_000_000, () -> 0);
      Value few = call("LAB_SIMULATE", cell("C3"), cells("C1", "C2"), column(0.1, 0.2), null, 1000);
      assertThat(((Value.Table) few).height()).isEqualTo(5);
      assertThat(
              Calls.said(
                  "LAB_SIMULATE", cell("C3"), cells("C1", "C2"), column(0.1, 0.2), null, 1_000_000))
          .startsWith("LAB_SIMULATE: the simulations and extremes of this workbook may take 3000");
    }

    /** By hand: u = |c1 u1 + c2 u2| with r = 1, c1 = 1.5, c2 = 3. */
    @Test
    void areNoneWhereNothingIsCountedTwice() {
      sheet.put("C1", 3).put("C2", "=C1/2").put("C3", "=C1*C2").put("C4", "=0*C1+5");
      sheet.put("C5", "=C3+C4");
      Value full = table(row(1, 1), row(1, 1));
      assertThat(
              number(
                  "LAB_CARRY",
                  cell("C3"),
                  cells("C1", "C2"),
                  column(0.1, 0.05),
                  "quadrature",
                  full))
          .isCloseTo(0.3, within(1e-15));
      assertThat(number("LAB_CARRY", cell("C3"), cells("C1", "C2"), column(0, 0.05)))
          .isCloseTo(0.15, within(1e-15));
      assertThat(number("LAB_CARRY", cell("C5"), cells("C3", "C4"), column(0.1, 0.05)))
          .isCloseTo(0.15, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "B8 | cell B8 holds no formula, so nothing is carried through it.",
          "B9 | cell B9 holds no formula, so nothing is carried through it.",
          "B2 | cell B2 is both result and input.",
          "B7 | the formula uses none of the inputs B2, B3.",
          "B10 | cell B10: ROUND(9.78584; 1) jumps, bends or is infinitely steep at this value, so"
              + " that no uncertainty can be carried through it; LAB_EXTREMES or LAB_SIMULATE may"
              + " help.",
          "B11 | cells refer to each other in a circle: B11, B12, B11.",
          "B13 | cell B13: SQRT(-0.828) is not defined."
        })
    void ofTheResultAreExplained(String result, String sentence) {
      assertThat(fault("LAB_CARRY", cell(result), cells("B2", "B3"), SIZES))
          .isEqualTo("LAB_CARRY: " + sentence);
    }

    @Test
    void includeLiteralsWhereCellsBelong() {
      assertThat(fault("LAB_CARRY", 9.81, cells("B2", "B3"), SIZES))
          .isEqualTo("LAB_CARRY: result is 9.81; it must be a reference to cells.");
      assertThat(fault("LAB_CARRY", cells("B5", "B6"), cells("B2", "B3"), SIZES))
          .isEqualTo(
              "LAB_CARRY: result is a range of 2 by 1 cells; it must be one cell with a formula.");
      assertThat(fault("LAB_CARRY", cell("B5"), 3, SIZES))
          .isEqualTo("LAB_CARRY: inputs is 3; it must be a reference to cells.");
    }

    @Test
    void includeUncertaintiesThatDoNotMatch() {
      assertThat(fault("LAB_CARRY", cell("B5"), cells("B2", "B3"), column(0.1)))
          .isEqualTo(
              "LAB_CARRY: uncertainties has 1 cell and inputs has 2; they must have equally"
                  + " many.");
      assertThat(fault("LAB_CARRY", cell("B5"), cells("B2", "B3"), column(0.1, -1)))
          .isEqualTo(
              "LAB_CARRY: uncertainties (row 2) is -1; it must be a number, zero or greater.");
      assertThat(fault("LAB_CARRY", cell("B5"), cells("B2", "B3"), column(0.1, null)))
          .isEqualTo(
              "LAB_CARRY: uncertainties (cell 2) is blank, but inputs (cell 2) is not; both must be"
                  + " given or both blank. Write 0 for an exact value.");
      assertThat(fault("LAB_CARRY", cell("B5"), cells("B2", "B4"), column(0.1, 0.1, 0.1)))
          .contains("inputs (cell 3) is blank, but uncertainties (cell 3) is not");
    }

    @Test
    void includeATextAmongTheInputs() {
      assertThat(fault("LAB_CARRY", cell("B5"), cells("B8", "B9"), SIZES))
          .isEqualTo("LAB_CARRY: cell B9: the text \"9.81 m/s²\" stands where a number is needed.");
    }

    @Test
    void includeCorrelationsThatCannotBe() {
      assertThat(
              fault(
                  "LAB_CARRY",
                  cell("B5"),
                  cells("B2", "B3"),
                  SIZES,
                  null,
                  table(row(1, 0), row(0, 1))))
          .isEqualTo(
              "LAB_CARRY: correlations are given, but combine is straight; it must be quadrature.");
      assertThat(
              fault("LAB_CARRY", cell("B5"), cells("B2", "B3"), SIZES, "quadrature", column(1, 0)))
          .isEqualTo(
              "LAB_CARRY: correlations is a range of 2 by 1 cells; it must be a range of 2 by 2"
                  + " cells, one row and column for each input.");
      assertThat(
              fault(
                  "LAB_CARRY",
                  cell("B5"),
                  cells("B2", "B3"),
                  SIZES,
                  "quadrature",
                  table(row(1, 0.2), row(0.3, 1))))
          .isEqualTo(
              "LAB_CARRY: correlations must be the same on both sides of the diagonal; row 2,"
                  + " column 1 differs from row 1, column 2.");
      assertThat(
              fault(
                  "LAB_CARRY",
                  cell("B5"),
                  cells("B2", "B3"),
                  SIZES,
                  "quadrature",
                  table(row(1, 2), row(2, 1))))
          .isEqualTo(
              "LAB_CARRY: correlations (row 1, column 2) is 2; it must be a number from -1 to 1.");
    }
  }

  @Nested
  class CarryTable {

    @Test
    void listsEachInputAndTheResult() {
      Value result = call("LAB_CARRYTABLE", cell("B5"), cells("B2", "B3"), SIZES);
      double g = 4 * Math.PI * Math.PI * 0.172 / (0.833 * 0.833);
      List<List<Value>> rows = ((Value.Table) result).rows();
      assertThat(rows).hasSize(3);
      assertRow(rows.get(0), "B2", 0.172, 0.001, g / 0.172, g * 0.001 / 0.172, 0.377094);
      assertRow(rows.get(1), "B3", 0.833, 0.004, -2 * g / 0.833, g * 0.008 / 0.833, 0.622906);
      assertThat(rows.get(2).get(0)).isEqualTo(Value.of("result"));
      assertThat(((Value.Numeric) rows.get(2).get(1)).number()).isCloseTo(g, within(1e-14));
    }

    private void assertRow(List<Value> row, String label, double... numbers) {
      assertThat(row.get(0)).isEqualTo(Value.of(label));
      for (int i = 0; i < numbers.length; i++) {
        assertThat(((Value.Numeric) row.get(i + 1)).number())
            .isCloseTo(numbers[i], within(1e-6 * Math.max(1e-6, Math.abs(numbers[i]))));
      }
    }

    @Test
    void showsAnInputThatTheFormulaDoesNotUseWithoutContribution() {
      sheet.put("B4", 5);
      Value result =
          call("LAB_CARRYTABLE", cell("B5"), cells("B2", "B4"), column(0.001, 0.004, 0.5));
      assertThat(((Value.Table) result).rows().get(2)).isEqualTo(row("B4", 5, 0.5, 0, 0, 0));
    }

    @Test
    void hasNoSharesOfNothing() {
      Value result = call("LAB_CARRYTABLE", cell("B5"), cells("B2", "B3"), column(0, 0));
      assertThat(((Value.Table) result).rows())
          .allSatisfy(row -> assertThat(row.get(5)).isEqualTo(Value.of(0)));
    }

    @Test
    void explainsABadArgument() {
      assertThat(sentence(call("LAB_CARRYTABLE", cell("B8"), cells("B2", "B3"), SIZES)))
          .isEqualTo("LAB_CARRYTABLE: cell B8 holds no formula, so nothing is carried through it.");
    }
  }

  @Nested
  class CarryText {

    private final Value names = column("L", "T");
    private final Value values = column(0.172, 0.833);

    @ParameterizedTest
    @ValueSource(strings = {"4*PI()^2*L/T^2", "=4*PI()^2*L/T^2", " 4 * pi()^2 * L / (T*T)"})
    void givesWhatTheCellsGive(String formula) {
      assertThat(number("LAB_CARRYTEXT", formula, names, values, SIZES))
          .isCloseTo(number("LAB_CARRY", cell("B5"), cells("B2", "B3"), SIZES), within(1e-14));
    }

    @Test
    void knowsCapitalFromSmallLetters() {
      assertThat(
              number("LAB_CARRYTEXT", "M/m", column("m", "M"), column(2.0, 6.0), column(0.0, 0.5)))
          .isEqualTo(0.25);
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "4*pi^2*L/T^2 | the formula uses pi, which is not among the names.",
          "l/T | the formula uses l, which is not among the names.",
          "2L | the formula cannot be read at place 2, before \"L\".",
          "1,5*L | the formula cannot be read at place 2, before \",\"; write decimals with a point.",
          "2*3 | the formula uses none of the inputs L, T."
        })
    void explainsABadFormula(String formula, String sentence) {
      assertThat(fault("LAB_CARRYTEXT", formula, names, values, SIZES))
          .isEqualTo("LAB_CARRYTEXT: " + sentence);
    }

    @Test
    void explainsBadNames() {
      assertThat(fault("LAB_CARRYTEXT", "L", column("L", "L"), values, SIZES))
          .isEqualTo("LAB_CARRYTEXT: the name L is given twice.");
      assertThat(fault("LAB_CARRYTEXT", "L", column("L", "2T"), values, SIZES))
          .contains("\"2T\" cannot be a name");
      assertThat(fault("LAB_CARRYTEXT", "L", column("L"), values, SIZES))
          .contains("names has 1 cell and values has 2; they must have equally many.");
      assertThat(fault("LAB_CARRYTEXT", "L", column("L", null), values, SIZES))
          .contains("names (cell 2) is blank");
    }
  }

  @Nested
  class ExtremesAndSimulation {

    @Test
    void giveTheCorners() {
      Value result = call("LAB_EXTREMES", cell("B5"), cells("B2", "B3"), SIZES);
      double k = 4 * Math.PI * Math.PI;
      assertThat(labelled(result).get("lowest"))
          .isCloseTo(k * 0.171 / (0.837 * 0.837), within(1e-13));
      assertThat(labelled(result).get("highest"))
          .isCloseTo(k * 0.173 / (0.829 * 0.829), within(1e-13));
    }

    @Test
    void giveMeanUncertaintyAndInterval() {
      Value result = call("LAB_SIMULATE", cell("B5"), cells("B2", "B3"), SIZES, "normal");
      double u = number("LAB_CARRY", cell("B5"), cells("B2", "B3"), SIZES, "quadrature");
      double g = 4 * Math.PI * Math.PI * 0.172 / (0.833 * 0.833);
      assertThat(labelled(result).get("mean")).isCloseTo(g, within(0.01 * u));
      assertThat(labelled(result).get("standard uncertainty")).isCloseTo(u, within(0.01 * u));
      assertThat(labelled(result).get("95 % interval from"))
          .isCloseTo(g - 1.96 * u, within(0.03 * u));
      assertThat(labelled(result).get("95 % interval to"))
          .isCloseTo(g + 1.96 * u, within(0.03 * u));
    }

    @Test
    void goThroughRoundedCells() {
      assertThat(
              labelled(call("LAB_EXTREMES", cell("B10"), cells("B2", "B3"), SIZES)).get("lowest"))
          .isEqualTo(9.6);
    }

    // EA-4/02 M: S9 is stated with k = 1.65, as its dominant input is rectangular; S10 with k =
    // 1.83,
    // as two rectangular ones of half-widths 25 and 50 µm make a trapezium; from memory
    @ParameterizedTest
    @CsvSource({"0, 50, 1.65", "25, 50, 1.83"})
    void printTheCoverageFactor(double first, double second, double printed) {
      sheet.put("D1", "=B2+B3");
      Value result =
          call(
              "LAB_SIMULATE",
              cell("D1"),
              cells("B2", "B3"),
              column(first, second),
              null,
              1_000_000);
      assertThat(labelled(result).get("coverage factor")).isCloseTo(printed, within(0.006));
    }

    // By hand: half-width 3 rectangular and standard uncertainty 2: u² = 3 + 4
    @Test
    void takeAShapeForEachInput() {
      sheet.put("D1", "=B2+B3");
      Value result =
          call(
              "LAB_SIMULATE",
              cell("D1"),
              cells("B2", "B3"),
              column(3, 2),
              column(null, "normal"),
              1_000_000);
      assertThat(labelled(result).get("standard uncertainty"))
          .isCloseTo(Math.sqrt(7), within(0.01));
      assertThat(
              sentence(
                  call(
                      "LAB_SIMULATE",
                      cell("D1"),
                      cells("B2", "B3"),
                      column(3, 2),
                      column("normal", "normal", "normal"))))
          .startsWith("LAB_SIMULATE: shape has 3 cells and inputs has 2;");
    }

    // JCGM 100:2008, H.2 (from memory; means and their correlations as in LabCarryPairTest): R with
    // u = 0.071 ohm; without correlations it is 0.195
    @Test
    void drawCorrelatedInputs() {
      sheet.put("F1", 4.9990).put("F2", 19.6610e-3).put("F3", 1.04446).put("G1", "=F1/F2*COS(F3)");
      Value correlations =
          table(
              row(1, -0.355311, 0.857624),
              row(-0.355311, 1, -0.645111),
              row(0.857624, -0.645111, 1));
      Value sizes = column(3.20936e-3, 9.47101e-6, 7.52064e-4);
      Map<String, Double> result =
          labelled(
              call(
                  "LAB_SIMULATE",
                  cell("G1"),
                  cells("F1", "F3"),
                  sizes,
                  "normal",
                  1_000_000,
                  1,
                  correlations));
      assertThat(result.get("mean")).isCloseTo(127.732, within(1e-3));
      assertThat(result.get("standard uncertainty")).isCloseTo(0.071, within(5e-4));
      assertThat(result.get("coverage factor")).isCloseTo(1.96, within(0.01));
      assertThat(
              sentence(
                  call(
                      "LAB_SIMULATE",
                      cell("G1"),
                      cells("F1", "F3"),
                      sizes,
                      null,
                      null,
                      null,
                      correlations)))
          .isEqualTo(
              "LAB_SIMULATE: correlations are given, but not all shapes are normal; only normal inputs"
                  + " are drawn with correlations.");
    }

    @Test
    void takeASeedAndANumberOfSamples() {
      assertThat(call("LAB_SIMULATE", cell("B5"), cells("B2", "B3"), SIZES, "triangular", 1000, 3))
          .isEqualTo(
              call("LAB_SIMULATE", cell("B5"), cells("B2", "B3"), SIZES, "triangular", 1000, 3));
      assertThat(
              sentence(call("LAB_SIMULATE", cell("B5"), cells("B2", "B3"), SIZES, "triangular", 5)))
          .isEqualTo("LAB_SIMULATE: samples is 5; it must be a whole number from 10 to 1000000.");
    }
  }
}
