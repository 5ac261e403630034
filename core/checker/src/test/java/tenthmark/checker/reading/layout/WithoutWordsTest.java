package tenthmark.checker.reading.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.checker.workbook.Grid;

/** Tables whose order or formulas tell what no heading says. Gauges and numbers are invented. */
class WithoutWordsTest {

  @Nested
  class OneHeadingBehindSeveralColumns {

    @Test
    void makesEachOfThemAValue() {
      Grid grid =
          Grid.sheet("Tyre")
              .row("day", "what the gauge says / bar", "error / bar", "given / bar", "error / bar")
              .row(1, 3.5, 0.02, 3.45, 0.05)
              .row(4, 3.3, 0.02, 3.25, 0.05);

      assertThat(RecordsRead.of(grid))
          .containsExactlyInAnyOrder("B2 ± C2 bar", "D2 ± E2 bar", "B3 ± C3 bar", "D3 ± E3 bar");
    }

    @Test
    void doesNotWhereTheHeadingsDiffer() {
      Grid grid =
          Grid.sheet("Tyre")
              .row("Spoke", "Length (mm)", "Uncertainty (mm)", "Accepted (mm)", "Error (mm)")
              .row("front", 262.5, 0.5, 262.0, 0.5)
              .row("rear", 260.5, 0.5, 260.0, 0.5);

      assertThat(RecordsRead.of(grid)).containsExactly("B2 ± C2 mm", "B3 ± C3 mm");
    }
  }

  @Nested
  class ACoverageFactor {

    @Test
    void makesAnUncertaintyOfWhatItStandsBeside() {
      Grid grid =
          Grid.sheet("Check")
              .row("Set point", "Reference", "U (k=2)", "Wrench", "U (k=2)")
              .row("N·m", "N·m", "N·m", "N·m", "N·m")
              .row(5, 5.02, 0.03, 5.2, 0.2)
              .row(10, 10.04, 0.05, 10.3, 0.2);

      assertThat(RecordsRead.of(grid))
          .containsExactlyInAnyOrder("B3 ± C3 N·m", "D3 ± E3 N·m", "B4 ± C4 N·m", "D4 ± E4 N·m");
    }
  }

  @Nested
  class HalfOfWhatLiesBetweenTwoNumbers {

    private static Grid chains(double smallest, double largest, String middle) {
      return Grid.sheet("Chains")
          .row("chain", "smallest (mm)", "largest (mm)", "pitch p (mm)", "half span (mm)")
          .row("new", smallest, largest, middle, "=(C2-B2)/2")
          .row("old", smallest + 0.01, largest + 0.01, "=(B3+C3)/2", "=(C3-B3)/2");
    }

    @Test
    void isTheUncertaintyOfTheirMiddle() {
      assertThat(RecordsRead.of(chains(12.68, 12.74, "=(B2+C2)/2"))).contains("D2 ± E2 mm");
      assertThat(RecordsRead.of(chains(12.68, 12.74, "=AVERAGE(B2:C2)"))).contains("D2 ± E2 mm");
    }

    @Test
    void isARadiusWhereItIsNotSmallBesideTheMiddle() {
      assertThat(RecordsRead.of(chains(12.0, 28.0, "=(B2+C2)/2"))).doesNotContain("D2 ± E2 mm");
    }
  }

  @Nested
  class HalfOfWhatLiesBetweenTheLeastAndTheGreatest {

    private static Grid spokes(double best) {
      return Grid.sheet("Spokes")
          .row("object", "least (mm)", "best (mm)", "most (mm)", "half of it (mm)")
          .row("spoke", 262.0, best, 263.0, "=(D2-B2)/2")
          .row("chain", 262.0, best, 263.0, "=(D3-B3)/2");
    }

    @Test
    void isTheUncertaintyOfTheBestValueBetweenThem() {
      assertThat(RecordsRead.of(spokes(262.5))).containsExactly("C2 ± E2 mm", "C3 ± E3 mm");
    }

    @Test
    void isNotThatOfANumberThatLiesElsewhere() {
      assertThat(RecordsRead.of(spokes(170.0))).doesNotContain("C2 ± E2 mm");
    }
  }

  @Nested
  class AQuantityLeftOfValueAndUncertainty {

    @Test
    void namesThemAndSaysTheirUnit() {
      Grid grid =
          Grid.sheet("Lever")
              .row("run", "", 1, 2, 3)
              .row("force F in N", "value", 5.2, 10.1, 15.3)
              .row("", "uncertainty", 0.2, 0.2, 0.2)
              .row("path x in mm", "value", 3.0, 6.0, 9.0)
              .row("", "uncertainty", 0.5, 0.5, 0.5);

      assertThat(RecordsRead.of(grid))
          .contains("C2 ± C3 N", "D2 ± D3 N", "C4 ± C5 mm", "E4 ± E5 mm")
          .hasSize(6);
    }
  }

  @Nested
  class WhatAMakerStatesInPercent {

    private static List<Integer> contributions(Object total) {
      Grid grid =
          Grid.sheet("Lamp")
              .row("meter", "value", "unit", "accuracy (%)", "uncertainty (V)")
              .row("first", 5.85, "V", 1, total)
              .row("second", 6.1, "V", 2, total);
      return RecordsRead.records(grid).stream().map(found -> found.contributions().size()).toList();
    }

    @Test
    void isNoPartOfTheUncertaintyThatFollowsFromIt() {
      assertThat(contributions(0.06)).containsExactly(0, 0);
    }
  }

  @Nested
  class ASentenceOfUnits {

    private static Grid card(String sentence) {
      return Grid.sheet("Card")
          .row("x", "u(x)", "y", "u(y)")
          .row(1.0, 0.1, 2.1, 0.2)
          .row(2.0, 0.1, 3.9, 0.2)
          .row()
          .row(sentence);
    }

    @Test
    void servesAllThatHasNone() {
      assertThat(RecordsRead.of(card("Both in cm, read by eye on the card.")))
          .contains("A2 ± B2 cm", "C3 ± D3 cm");
    }

    @Test
    void servesNothingWhereItSpeaksOfOneThing() {
      assertThat(RecordsRead.of(card("The card is ruled in cm, as cards are.")))
          .contains("A2 ± B2", "C3 ± D3");
    }
  }

  @Nested
  class ALineAtTheFootThatFormulasUse {

    private static Grid lever(String work) {
      return Grid.sheet("Lever")
          .row("", "path x / mm", "force F / N", "work W / mJ", "± W / mJ")
          .row(1, 4.0, 6.2, "=B2*C2/2", work)
          .row(2, 8.0, 12.1, "=B3*C3/2", "=D3*($B$5/B3+$C$5/C3)")
          .row(3, 12.0, 18.3, "=B4*C4/2", "=D4*($B$5/B4+$C$5/C4)")
          .row("of each number", 0.5, 0.2);
    }

    @Test
    void isTheUncertaintyOfAllAboveIt() {
      assertThat(RecordsRead.of(lever("=D2*($B$5/B2+$C$5/C2)")))
          .contains("B2 ± B5 mm", "B3 ± B5 mm", "B4 ± B5 mm", "C2 ± C5 N", "C4 ± C5 N");
    }
  }
}
