package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.checker.workbook.Grid;

/**
 * Units that go through a workbook's own formulas. What a formula gives follows from the
 * definitions of the derived units (SI Brochure, 9th edition, tables 4 and 5, from memory); numbers
 * are invented.
 */
class UnitUnlikeFormulaTest {

  /** Three measured values in B2 to B4 of these units, and a value calculated from them. */
  private static Grid calculated(
      String first, String second, String third, String formula, String unit) {
    return Grid.sheet("Records")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("one", 4.5, first, 0.1, REASON)
        .row("other", 2.5, second, 0.1, REASON)
        .row("third", 1.5, third, 0.1, REASON)
        .row("result", formula, unit, "=B5*0.1");
  }

  private static List<Finding> found(Grid grid) {
    return Findings.in(grid.workbook()).stream()
        .filter(finding -> finding.rule().id().equals("unit-unlike-formula"))
        .toList();
  }

  @Nested
  class IsFound {

    @ParameterizedTest
    @CsvSource({
      // kind of quantity
      "g, mm, mm, =B2/B3, g/cm³",
      "m, s, s, =B2/B3^2, m/s",
      "N, m, m, =B2*B3, N/m",
      "V, A, A, =B3/B2, Ω",
      "m, s, s, =SQRT(B2/B3), s",
      "kg, m, m, =B2*B3^2, J",
      // size
      "mm, mm, mm, =PI()/4*B2^2*B3, cm³",
      "g, mm, mm, =B2/B3^3, g/cm³",
      "m, s, s, =B2/B3, km/h",
      "s, s, s, =1/B2, 1/min",
      // sums
      "mm, cm, cm, =B2+B3, mm",
      "mm, g, g, =B2-B3, mm",
      "mm, cm, mm, '=SUM(B2:B2,B3)', mm",
      // angles
      "m, °, °, =B2*SIN(B3), m",
      "m, mm, mm, =B2*COS(B3), m"
    })
    void whereUnitsDoNotFit(
        String first, String second, String third, String formula, String unit) {
      assertThat(found(calculated(first, second, third, formula, unit)))
          .singleElement()
          .satisfies(
              finding -> {
                assertThat(finding.cell().place()).isEqualTo("B5");
                assertThat(finding.rule().severity()).isEqualTo(Severity.ERROR);
              });
    }

    @Test
    void withWhatTheFormulaGives() {
      Finding finding = found(calculated("mm", "mm", "mm", "=PI()/4*B2^2*B3", "cm³")).get(0);

      assertThat(Findings.found(finding))
          .isEqualTo("=PI()/4*B2^2*B3 gives mm³, and the unit beside it is cm³");
      assertThat(Findings.expected(finding)).isEqualTo("the result converted: 1 mm³ is 0.001 cm³");
    }

    @Test
    void onceForCopiesOfAFormula() {
      Grid grid =
          Grid.sheet("Records")
              .row("L / mm", "ΔL / mm", "m / g", "Δm / g", "ρ / (g/cm³)", "Δρ / (g/cm³)")
              .row(10.1, 0.1, 20.2, 0.1, "=C2/A2", "=E2*(B2/A2+D2/C2)")
              .row(11.1, 0.1, 22.2, 0.1, "=C3/A3", "=E3*(B3/A3+D3/C3)")
              .row(12.1, 0.1, 24.2, 0.1, "=C4/A4", "=E4*(B4/A4+D4/C4)");

      assertThat(found(grid)).extracting(finding -> finding.cell().place()).containsExactly("E2");
    }

    @Test
    void inASlopeWhoseAxesChangedPlaces() {
      assertThat(found(line("=SLOPE(A2:A5,C2:C5)", "N/mm")))
          .extracting(finding -> finding.cell().place())
          .containsExactly("B8");
      assertThat(found(line("=INDEX(LINEST(A2:A5,C2:C5,TRUE,TRUE),1,1)", "N/mm"))).hasSize(1);
      assertThat(found(line("=SLOPE(C2:C5,A2:A5)", "N/mm"))).isEmpty();
      assertThat(found(line("=INTERCEPT(C2:C5,A2:A5)", "N"))).isEmpty();
      assertThat(found(line("=SLOPE(C2:C5,A2:A5)*1000", "N/m"))).isEmpty();
    }

    private static Grid line(String formula, String unit) {
      return Grid.sheet("Records")
          .row("x / mm", "Δx / mm", "F / N", "ΔF / N")
          .row(10.1, 0.1, 1.9, 0.1)
          .row(20.1, 0.1, 4.1, 0.1)
          .row(30.1, 0.1, 6.1, 0.1)
          .row(40.1, 0.1, 7.9, 0.1)
          .row()
          .row("Quantity", "Value", "Unit", "Uncertainty")
          .row("slope", formula, unit, 0.01);
    }
  }

  @Nested
  class IsNotFound {

    @ParameterizedTest
    @CsvSource({
      "g, mm, mm, =B2/B3^3*1000, g/cm³",
      "g, cm, cm, =B2/B3^3, g/cm³",
      "g, mm, mm, =B2/(B3/10)^3, g/cm³",
      "m, s, s, =B2/B3*3.6, km/h",
      "mm, cm, cm, =B2/10+B3, cm",
      "mm, cm, cm, =(B2+B3*10)/10, cm",
      "m, °, °, =B2*SIN(RADIANS(B3)), m",
      "m, °, °, =B2*SIN(B3*PI()/180), m",
      "m, s, s, =2*B2/B3^2, m/s²",
      "°C, °C, °C, =B2+273.15, K",
      "m, s, s, =2*PI()*SQRT(B2/B3^2/B3)*B3, m^(1/2)/s",
      "V, A, A, =B2*B3, W",
      "V, A, h, =B2*B3*B4*3600, J",
      "m, s, s, =B2/B3/20, m/s",
      "kg, m, s, =0.5*B2*(B3/B4)^2, J",
      "s, s, s, =60/B2, 1/min",
      "s, s, s, =600/B2, 1/min",
      "kg, mm, mm, =B2*(B3/2000)^2, kg·m²",
      "m, m, m, =(B2-B3)/B3*100, %",
      "m, m, m, =(B2-B3)/B3, %",
      "spokes, m, m, =B2/B3, m",
      "m, s, s, =IF(B3=0,0,B2/B3), m/s",
      "m, s, s, =MOD(B2,B3), K"
    })
    void whereTheyFitOrNothingIsKnown(
        String first, String second, String third, String formula, String unit) {
      assertThat(found(calculated(first, second, third, formula, unit))).isEmpty();
    }
  }

  @Nested
  class IsANote {

    @ParameterizedTest
    @CsvSource({
      "kg, m, m, =B2*9.81*B3, J",
      "m, s, s, =B2/343, s",
      "g, K, K, =B2*4.19*B3, J",
      // nobody divides by a one that has no unit, such as the density of water
      "g, K, K, =B2/1, cm³"
    })
    void whereANumberMayHaveAUnit(
        String first, String second, String third, String formula, String unit) {
      assertThat(found(calculated(first, second, third, formula, unit)))
          .singleElement()
          .satisfies(
              finding -> {
                assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
                assertThat(Findings.expected(finding))
                    .endsWith("no fault if a number written in the formula has a unit of its own");
              });
    }
  }
}
