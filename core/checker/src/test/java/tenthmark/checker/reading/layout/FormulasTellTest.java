package tenthmark.checker.reading.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.record.Field;
import tenthmark.checker.workbook.Grid;

/**
 * Uncertainties that formulas tell, whatever the headings are. Cranks, tyres and numbers are
 * invented; that a carried uncertainty adds what each input brings is JCGM 100:2008, 5.1.2.
 */
class FormulasTellTest {

  /** A crank's mass and length, and what is computed of them. */
  private static Grid crank(String value, String uncertainty) {
    return Grid.sheet("Crank")
        .row("what", "so much", "besides")
        .row("mass (g)", 268.4, 0.2)
        .row("length (mm)", 170.5, 0.5)
        .row("the rest (g/mm)", value, uncertainty);
  }

  @Nested
  class ACarriedUncertainty {

    @ParameterizedTest
    @CsvSource({
      "=B2/B3, =B4*(C2/B2+C3/B3)",
      "=B2/B3, =B4*SQRT((C2/B2)^2+(C3/B3)^2)",
      "=B2/B3, '=ROUND(B4*(C2/B2+C3/B3),4)'",
      "=B2/B3^2, =B4*(C2/B2+2*C3/B3)"
    })
    void isOneAndSoAreItsParts(String value, String uncertainty) {
      assertThat(RecordsRead.of(crank(value, uncertainty)))
          .containsExactly("B2 ± C2 g", "B3 ± C3 mm", "B4 ± C4 g/mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=B2/B3", "=2*B4", "=C2+C3"})
    void isNotWhatIsMerelyComputedBesideIt(String other) {
      assertThat(RecordsRead.of(crank("=B2/B3", other))).isEmpty();
    }

    @Test
    void maybeOfASumOrADifference() {
      Grid grid =
          Grid.sheet("Chain")
              .row("what", "so much", "besides", "unit")
              .row("worn", 639.5, 1.0, "mm")
              .row("new", 635.0, 1.0, "mm")
              .row("longer by", "=B2-B3", "=C2+C3", "mm")
              .row("in steel", 7.8, 0.1, "g/cm³")
              .row("per length", "=B5/B2", "=B6*(C5/B5+C2/B2)", "1");

      assertThat(RecordsRead.of(grid)).contains("B4 ± C4 mm", "B3 ± C3 mm", "B2 ± C2 mm");
    }

    @Test
    void mayStandOnAnotherSheet() {
      Grid grid =
          Grid.sheet("Values")
              .row("what", "value", "unit")
              .row("force", 24.5, "N")
              .row("arm", 0.17, "m")
              .row("torque", "=B2*B3", "N·m")
              .andSheet("Off by")
              .row("force", 0.5)
              .row("arm", 0.001)
              .row("torque", "=Values!B4*(B1/Values!B2+B2/Values!B3)");

      assertThat(RecordsRead.of(grid)).containsExactly("B2 ± B1 N", "B3 ± B2 m", "B4 ± B3 N·m");
    }

    @Test
    void servesAllValuesThatItIsTakenFor() {
      Grid grid =
          Grid.sheet("Lens")
              .row("p (cm)", "q (cm)", "m", "off by", "each length off by (cm)")
              .row(15.0, 30.1, "=B2/A2", "=C2*($E$2/A2+$E$2/B2)", 0.2)
              .row(20.0, 19.9, "=B3/A3", "=C3*($E$2/A3+$E$2/B3)");

      assertThat(RecordsRead.of(grid))
          .contains("A2 ± E2 cm", "B2 ± E2 cm", "A3 ± E2 cm", "B3 ± E2 cm");
    }
  }

  @Nested
  class ACount {

    @Test
    void isUncertainByItsRoot() {
      Grid grid =
          Grid.sheet("Bicycles")
              .row("when", "N", "√N")
              .row("early", 47, "=SQRT(B2)")
              .row("late", 38, "=SQRT(B3)");

      assertThat(RecordsRead.of(grid)).containsExactly("B2 ± C2", "B3 ± C3");
    }

    @Test
    void isNoneWhereTheNumberIsNotWhole() {
      Grid grid =
          Grid.sheet("Swing")
              .row("which", "x", "√x")
              .row("one", 4.7, "=SQRT(B2)")
              .row("two", 3.8, "=SQRT(B3)");

      assertThat(RecordsRead.of(grid)).isEmpty();
    }
  }

  @Nested
  class ATotal {

    private static Grid arm(String total) {
      return Grid.sheet("Arm")
          .row("what", "value", "reading", "where the finger presses", "in all", "unit")
          .row("long arm", 81.0, 0.5, 1.5, total, "mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=C2+D2", "=SUM(C2:D2)", "=SQRT(C2^2+D2^2)", "=LAB_TOTAL(C2:D2)"})
    void isTheUncertaintyAndWhatItAddsContributes(String total) {
      assertThat(RecordsRead.of(arm(total))).containsExactly("B2 ± E2 mm");
      assertThat(RecordsRead.records(arm(total)).get(0).contributions())
          .isEqualTo(Map.of(Field.READING, 0.5, Field.PHYSICAL, 1.5));
    }

    @Test
    void mayAddUpCellsOfAnotherSheet() {
      Grid grid =
          Grid.sheet("Values")
              .row("Quantity", "Value", "±", "Unit")
              .row("long arm", 81.0, "=Why!C1", "mm")
              .andSheet("Why")
              .row(0.5, 1.5, "=A1+B1");

      assertThat(RecordsRead.records(grid).get(0).contributions().values())
          .containsExactlyInAnyOrder(0.5, 1.5);
    }

    @Test
    void ofTwoOtherUncertaintiesHasNoContributions() {
      Grid grid =
          Grid.sheet("Tyre")
              .row("Quantity", "Value", "±", "Unit")
              .row("gauge", 2.5, 0.05, "bar")
              .row("barometer", 1.012, 0.002, "bar")
              .row("absolute", "=B2+B3", "=C2+C3", "bar");

      assertThat(RecordsRead.records(grid).get(2).contributions()).isEmpty();
    }
  }

  @Nested
  class ARelativeUncertainty {

    @Test
    void isToldByTheProductThatTakesIt() {
      Grid grid =
          Grid.sheet("Dynamo")
              .row("U (V)", "off", "I (A)", "off", "P (W)", "off")
              .row(1.52, 0.02, 0.101, 0.03, "=A2*C2", "=E2*(B2+D2)")
              .row(2.04, 0.02, 0.136, 0.03, "=A3*C3", "=E3*(B3+D3)");

      assertThat(RecordsRead.records(grid).get(0).absoluteUncertainty().orElseThrow())
          .isEqualTo(1.52 * 0.02);
    }

    @Test
    void isOneNumberForUnlikeQuantities() {
      Grid grid =
          Grid.sheet("Dynamo")
              .row("Error of U and of I:", 0.02)
              .row()
              .row("U (V)", "I (A)")
              .row(1.52, 0.101)
              .row(2.04, 0.136);

      assertThat(RecordsRead.records(grid)).hasSize(4);
      assertThat(RecordsRead.records(grid).get(3).absoluteUncertainty().orElseThrow())
          .isEqualTo(0.136 * 0.02);
    }
  }
}
