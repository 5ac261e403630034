package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.WorkbookFile;

/**
 * Worked examples of textbooks and guides, written as a student would, with formulas of the
 * spreadsheet: what is said of the uncertainty of the calculated value, which stands in E. The
 * numbers are the publishers', the wrong ones beside them ours.
 */
class PublishedExamplesTest {

  /** A course that says how contributions are combined, so that another way is noted. */
  private static final String STRAIGHT = "course: Bicycle workshop\nconvention: bench";

  @TempDir Path folder;

  private static Grid records() {
    return Grid.sheet("Example")
        .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale");
  }

  /** The rules about carrying that find something in the file. */
  private List<String> carried(Grid grid) throws Exception {
    return Findings.in(WorkbookFile.read(grid.xlsx(folder.resolve("example.xlsx"))), STRAIGHT)
        .stream()
        .map(Findings::brief)
        .filter(finding -> finding.contains("carried"))
        .toList();
  }

  /** A number, or a formula where it begins with an equals sign. */
  private static Object content(String written) {
    return written.startsWith("=") ? written : (Object) Double.valueOf(written);
  }

  /**
   * OpenStax, College Physics, ch. 1, problem 27: 3.955 by 3.050 m, each to 0.005 m, give 12.06 m²
   * to 0.035 m², percentages added; in quadrature 0.025 m² (reference/textbook/propagation.json; a
   * third party's solution).
   */
  @ParameterizedTest
  @CsvSource({
    "0.035, ''",
    "=C4*(E2/C2+E3/C3), ''",
    "0.025, E4 carried-otherwise",
    "=C4*SQRT((E2/C2)^2+(E3/C3)^2), E4 carried-otherwise",
    "0.015, E4 carried-differs",
    "=E2+E3, E4 carried-differs",
    "=E2*E3, E4 carried-differs"
  })
  void areaOfARoom(String uncertainty, String found) throws Exception {
    Grid grid =
        records()
            .row("Length", "a", 3.955, "m", 0.005, REASON)
            .row("Width", "b", 3.050, "m", 0.005, REASON)
            .row("Area", "A", "=C2*C3", "m^2", content(uncertainty), REASON);

    assertThat(carried(grid)).isEqualTo(found.isEmpty() ? List.of() : List.of(found));
  }

  /**
   * Harvey, Modern Analytical Chemistry (2000), ch. 4C: two deliveries of 9.992 ± 0.006 mL make
   * 19.984 mL, 0.0085 mL in quadrature and 0.012 mL straight (pages 82 and 83).
   */
  @ParameterizedTest
  @CsvSource({
    "0.012, ''",
    "=E2+E3, ''",
    "0.0085, E4 carried-otherwise",
    "=SQRT(SUMSQ(E2:E3)), E4 carried-otherwise",
    "0.006, E4 carried-differs",
    "0.03, E4 carried-differs"
  })
  void twoDeliveriesOfAPipette(String uncertainty, String found) throws Exception {
    Grid grid =
        records()
            .row("First delivery", "V1", 9.992, "mL", 0.006, REASON)
            .row("Second delivery", "V2", 9.992, "mL", 0.006, REASON)
            .row("Volume", "V", "=C2+C3", "mL", content(uncertainty), REASON);

    assertThat(carried(grid)).isEqualTo(found.isEmpty() ? List.of() : List.of(found));
  }

  /**
   * Harvey, example 4.6: 0.15 ± 0.01 A for 120 ± 1 s pass 18 C, 1.2 C in quadrature, which the book
   * rounds to 1 C (page 83); one digit fits the straight sum of 1.35 C as well.
   */
  @ParameterizedTest
  @CsvSource({
    "1.2, E4 carried-otherwise",
    "1, ''",
    "=SQRT((C3*E2)^2+(C2*E3)^2), E4 carried-otherwise",
    "0.0672, E4 carried-differs",
    "=E2*E3, E4 carried-differs"
  })
  void chargeThatACurrentPasses(String uncertainty, String found) throws Exception {
    Grid grid =
        records()
            .row("Current", "I", 0.15, "A", 0.01, REASON)
            .row("Time", "t", 120, "s", 1, REASON)
            .row("Charge", "Q", "=C2*C3", "C", content(uncertainty), REASON);

    assertThat(carried(grid)).isEqualTo(found.isEmpty() ? List.of() : List.of(found));
  }

  /**
   * EURACHEM/CITAC Guide CG 4 (2nd ed.), example A1: 100.28 mg of cadmium of purity 0.9999 in 100.0
   * mL are 1002.7 mg/L with a standard uncertainty of 0.9 mg/L (table A1.1).
   */
  @ParameterizedTest
  @CsvSource({
    "0.9, E5 carried-otherwise",
    "=C5*SQRT((E2/C2)^2+(E3/C3)^2+(E4/C4)^2), E5 carried-otherwise",
    "=C5*SQRT((E2/C2)^2+(E3/C3)^2), E5 carried-differs",
    "=C5*E3/C3, E5 carried-differs"
  })
  void cadmiumStandard(String uncertainty, String found) throws Exception {
    Grid grid =
        records()
            .row("Purity", "P", 0.9999, "1", 0.000058, REASON)
            .row("Mass", "m", 100.28, "mg", 0.05, REASON)
            .row("Volume", "V", 100.0, "mL", 0.07, REASON)
            .row("Concentration", "c", "=1000*C3*C2/C4", "mg/L", content(uncertainty), REASON);

    assertThat(carried(grid)).containsExactly(found);
  }

  /**
   * JCGM 100:2008, H.1.3 and table H.1: an end gauge by comparison, 50.000838 mm with a combined
   * standard uncertainty of 32 nm; two inputs have no part in it to first order (from memory, the
   * printed figures recomputed).
   */
  @ParameterizedTest
  @CsvSource({
    "0.000032, E8 carried-otherwise",
    "=SQRT(E2^2+E3^2+(C2*C5*E6)^2+(C2*C4*E7)^2), E8 carried-otherwise",
    "0.000025, E8 carried-differs",
    "=SQRT(E2^2+E3^2), E8 carried-differs"
  })
  void endGauge(String uncertainty, String found) throws Exception {
    Grid grid =
        records()
            .row("Standard", "lS", 50.000623, "mm", 0.000025, REASON)
            .row("Difference", "d", 0.000215, "mm", 0.0000097, REASON)
            .row("Thermal expansion", "alpha", 1.15e-5, "1/°C", 1.2e-6, REASON)
            .row("Deviation from 20 °C", "theta", -0.1, "°C", 0.41, REASON)
            .row("Difference of expansions", "dalpha", 0, "1/°C", 5.8e-7, REASON)
            .row("Difference of temperatures", "dtheta", 0, "°C", 0.029, REASON)
            .row("End gauge", "l", "=C2+C3-C2*(C6*C5+C4*C7)", "mm", content(uncertainty), REASON);

    assertThat(carried(grid)).containsExactly(found);
  }

  /** The same with the convention of the guide: nothing is otherwise then. */
  @Test
  void endGaugeByTheGuidesOwnConvention() {
    Grid grid =
        records()
            .row("Standard", "lS", 50.000623, "mm", 0.000025, REASON)
            .row("Difference", "d", 0.000215, "mm", 0.0000097, REASON)
            .row("End gauge", "l", "=C2+C3", "mm", "=SQRT(SUMSQ(E2:E3))", REASON);

    assertThat(Findings.in(grid, "convention: standard"))
        .extracting(finding -> finding.rule().id())
        .doesNotContain("carried-otherwise", "carried-differs");
  }
}
