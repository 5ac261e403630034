package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.course.Course;
import tenthmark.checker.workbook.Grid;
import tenthmark.measurement.catalogue.Catalogue;

/** Uncertainties of calculated values. Numbers are invented. */
class CarriedTest {

  private static Grid records() {
    return Grid.sheet("Records")
        .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale");
  }

  /** Two lengths with uncertainties that make 0.7 straight and 0.5 in quadrature. */
  private static Grid lengths() {
    return records()
        .row("Crank arm", "a", 172.5, "mm", 0.3, REASON)
        .row("Pedal axle", "b", 55.2, "mm", 0.4, REASON);
  }

  private static Grid sum(Object uncertainty) {
    return lengths().row("Reach", "R", "=C2+C3", "mm", uncertainty);
  }

  @Nested
  class Differs {

    @Test
    void isFoundWithEachInputsPart() {
      Finding finding = Findings.only(sum(0.9));

      assertThat(finding.rule().id()).isEqualTo("carried-differs");
      assertThat(finding.cell().place()).isEqualTo("E4");
      assertThat(Findings.found(finding)).isEqualTo("the uncertainty of \"Reach\" is 0.9");
      assertThat(Findings.expected(finding))
          .isEqualTo(
              "0.7 (straight: \"Crank arm\" 1 x 0.3 + \"Pedal axle\" 1 x 0.4)"
                  + " or 0.5 (quadrature of the same)");
    }

    @Test
    void namesTheInputThatIsLeftOut() {
      assertThat(Findings.expected(Findings.only(sum(0.3))))
          .endsWith("; the number fits straight without \"Pedal axle\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.7", "0.5"})
    void isNotSaidOfEitherWay(double uncertainty) {
      assertThat(Findings.in(sum(uncertainty))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=E2+E3",
          "=SQRT(E2^2+E3^2)",
          "=SQRT(SUMSQ(E2:E3))",
          "=LAB_TOTAL(E2:E3)",
          "=LAB_CARRY(C4,C2:C3,E2:E3)",
          "=LAB_CARRY(C4,C2:C3,E2:E3,\"quadrature\")",
          "=ROUND(E2+E3,1)",
          "=((C2+E2+C3+E3)-(C2-E2+C3-E3))/2"
        })
    void isNotSaidOfAFormulaThatCarries(String formula) {
      assertThat(Findings.in(sum(formula))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=E2", "=MAX(E2:E3)", "=E2*E3", "=LAB_CARRY(C4,C2,E2)", "=E2+E2"})
    void isFoundWhereAFormulaCarriesWrongly(String formula) {
      assertThat(Findings.in(sum(formula))).containsExactly("E4 carried-differs");
    }

    // worked by hand: d(pi d^2/4)/dd = pi d/2; 622 mm, 0.5 mm make 488.5 mm^2
    @ParameterizedTest
    @CsvSource({"490, ''", "500, ''", "485, ''", "0.5, differs", "240, differs", "550, differs"})
    void followsPowersAndConstants(double uncertainty, String verdict) {
      Grid grid =
          records()
              .row("Rim diameter", "d", 622, "mm", 0.5, REASON)
              .row(
                  "Area",
                  "A",
                  "=PI()*C2^2/4",
                  "mm^2",
                  uncertainty == 485 ? (Object) "=488.5" : uncertainty);

      assertThat(Findings.in(grid))
          .isEqualTo(
              verdict.isEmpty() ? java.util.List.of() : java.util.List.of("E3 carried-differs"));
    }

    /** Names for a calculation and for a number; by hand: 2 * 0.7 and 9.81 * 0.7. */
    @ParameterizedTest
    @CsvSource({
      "=diam, 1.4, ''",
      "=diam, 0.7, differs",
      "=offs, 0.7, ''",
      "=offs, 1.4, differs",
      "=gee*C2, 6.867, ''",
      "=gee*C2, 0.7, differs"
    })
    void followsNames(String formula, double uncertainty, String verdict) {
      Grid grid =
          records()
              .row("Hub radius", "r", 21.4, "mm", 0.7, REASON)
              .row("Result", "x", formula, "mm", uncertainty)
              .name("diam", "2*Records!$C$2")
              .name("offs", "10+Records!$C$2")
              .name("gee", "9.81");

      assertThat(Findings.in(grid).contains("E3 carried-differs")).isEqualTo(!verdict.isEmpty());
    }

    @Test
    void countsAnInputThatIsUsedTwiceOnce() {
      Grid grid =
          records()
              .row("Side", "s", 20, "mm", 0.5, REASON)
              .row("Square", "A", "=C2*C2", "mm^2", "=2*C2*E2");

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void followsCellsBetweenAndOtherSheets() {
      Grid grid =
          lengths()
              .andSheet("Results")
              .row("half", "=Records!C2/2")
              .row("Quantity", "Value", "Unit", "Uncertainty")
              .row("Half and axle", "=B1+Records!C3", "mm", 0.9);

      assertThat(Findings.expected(Findings.only(grid)))
          .startsWith("0.55 (straight: \"Crank arm\" 0.5 x 0.3 + \"Pedal axle\" 1 x 0.4)");
    }

    @Test
    void convertsAnUncertaintyInAnotherUnit() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value (cm)", "Uncertainty (mm)", "Rationale")
              .row("Arm", 17.25, 0.5, REASON)
              .andSheet("Results")
              .row("Quantity", "Value", "Unit", "Uncertainty")
              .row("Double", "=2*Records!B2", "cm", 0.1);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void readsAnUncertaintyInPercent() {
      Grid grid =
          records()
              .row("Arm", "a", 200, "mm", "1 %", REASON)
              .row("Double", "d", "=2*C2", "mm", "1 %")
              .row("Treble", "t", "=3*C2", "mm", 6);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void readsAStatedText() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Unit", "Uncertainty", "Result", "Rationale")
              .row("Arm", 172.5, "mm", 0.3, "172.5(3) mm", REASON)
              .row("Double", "=2*B2", "mm", null, "345.0(3) mm", null);

      assertThat(Findings.in(grid)).containsExactly("E3 carried-differs");
    }

    @Test
    void isNotSaidOfAMeanWhoseScatterMayCount() {
      Grid grid =
          records()
              .row("Turn 1", "t", 12.4, "s", 0.3, REASON)
              .row("Turn 2", "t", 12.9, "s", 0.3, REASON)
              .row("Mean turn", "T", "=AVERAGE(C2:C3)", "s", 0.25);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=SQRT((E2/SQRT(3))^2+(LAB_SHAPED(E3))^2)",
          "=INDEX(LAB_SIMULATE(C4,C2:C3,E2:E3),2,2)",
          "=LAB_CARRY(C4,C2:C3,E2:E3,\"quadrature\",G1:H2)"
        })
    void isNotSaidWhereAnotherMethodIsUsed(String formula) {
      assertThat(Findings.in(sum(formula))).doesNotContain("E4 carried-differs");
    }

    @Test
    void isNotSaidOfARecordWithContributionsOfItsOwn() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Unit", "Reading", "Uncertainty", "Rationale")
              .row("Zero end", 1.5, "mm", 0.25, 0.25, REASON)
              .row("Far end position", "=B2+172.5", "mm", 0.3, 0.3, REASON);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void isNotSaidWhereAnInputHasNoUncertainty() {
      Grid grid =
          records()
              .row("Crank arm", "a", 172.5, "mm", null, REASON)
              .row("Double", "d", "=2*C2", "mm", 0.9);

      assertThat(Findings.in(grid)).containsExactly("E2 uncertainty-missing");
    }
  }

  @Nested
  class StatedElsewhere {

    @Test
    void isFoundInTheArgumentsOfLabResult() {
      Grid grid =
          lengths()
              .row()
              .row("Reach", null, "=C2+C3")
              .row("its uncertainty", null, "=2*E2")
              .row("stated", null, "=LAB_RESULT(C5,C6,\"mm\")");

      assertThat(Findings.in(grid)).containsExactly("C6 carried-differs");
    }

    @Test
    void isFoundWhereLabCarryLeavesAnInputOut() {
      Grid grid = lengths().row().row().row("Reach", "=C2+C3", "=LAB_CARRY(B6,C2:C2,E2:E2)");

      Finding finding = Findings.only(grid);
      assertThat(Findings.found(finding)).isEqualTo("the uncertainty of \"Reach\" is 0.3");
      assertThat(Findings.expected(finding)).contains("fits straight without \"Pedal axle\"");
    }

    @Test
    void isNotSaidWhereTheyAreRight() {
      Grid grid =
          lengths()
              .row()
              .row()
              .row("Reach", "=C2+C3", "=LAB_CARRY(B6,C2:C3,E2:E3)")
              .row("stated", "=LAB_RESULT(B6,C6,\"mm\")");

      assertThat(Findings.in(grid)).isEmpty();
    }
  }

  @Nested
  class Nesting {

    private static Grid nested(Object radius, Object area) {
      return records()
          .row("Inner diameter", "d", 20, "mm", 0.5, REASON)
          .row("Wall", "w", 2, "mm", 0.2, REASON)
          .row("Outer radius", "r", "=C2/2+C3", "mm", radius)
          .row("Area", "A", "=PI()*C4^2", "mm^2", area);
    }

    // by hand: from the radius 2 pi 12 x 0.45 = 33.9 straight; from the raw inputs in quadrature
    // 75.4 x sqrt(0.25^2 + 0.2^2) = 24.1
    @ParameterizedTest
    @CsvSource({"0.45, 34", "0.45, 24", "0.32, 24", "0.32, 34"})
    void acceptsTheIntermediateAndTheRawInputs(double radius, double area) {
      assertThat(Findings.in(nested(radius, area))).isEmpty();
    }

    @Test
    void findsWhatFollowsFromNeither() {
      assertThat(Findings.in(nested(0.45, 12))).containsExactly("E5 carried-differs");
    }

    @Test
    void needsNoUncertaintyOfAnIntermediate() {
      assertThat(Findings.in(nested(null, 34))).isEmpty();
    }

    @Test
    void needsOneOfTheLast() {
      assertThat(Findings.in(nested(0.45, null))).containsExactly("E5 uncertainty-missing");
      assertThat(Findings.in(nested(null, null))).containsExactly("E5 uncertainty-missing");
    }
  }

  @Nested
  class NotFollowed {

    @ParameterizedTest
    @CsvSource({
      "'=ROUND(C2+C3,0)', ROUND",
      "'=C2+C3*LAB_ROUNDEDVALUE(1,0.1)*LAB_ROUNDEDVALUE(C3,1)/C3', LAB_ROUNDEDVALUE"
    })
    void isANoteWithTheReason(String formula, String reason) {
      Finding finding = Findings.only(lengths().row("Reach", "R", formula, "mm", 3.3));

      assertThat(finding.rule().id()).isEqualTo("not-checkable");
      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(finding.cell().place()).isEqualTo("E4");
      assertThat(Findings.found(finding))
          .startsWith("the uncertainty of \"Reach\" cannot be compared")
          .contains(reason);
    }

    @Test
    void isANoteWhereMoreThanTheRecordsMayBeIncluded() {
      Grid grid =
          lengths()
              .row()
              .row(null, null, null, null, null, null, null, "offset", 12, 0.6)
              .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Reach", "R", "=C2+C3+I5", "mm", 1.3);

      assertThat(Findings.in(grid)).containsExactly("E7 not-checkable");
    }

    @Test
    void isFoundAllTheSameWhereTheNumberIsTooSmall() {
      Grid grid =
          lengths()
              .row()
              .row(null, null, null, null, null, null, null, "offset", 12, 0.6)
              .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Reach", "R", "=C2+C3+I5", "mm", 0.2);

      assertThat(Findings.in(grid)).containsExactly("E7 carried-differs");
      assertThat(Findings.expected(Findings.only(grid))).contains("; taken as exact: I5");
    }
  }

  @Nested
  class Otherwise {

    @Test
    void saysWhichWayTheNumberFitsWhereTheCourseHasItsOwn() {
      Course course =
          new Course(
              "Wheels",
              Course.PLAIN.convention(),
              false,
              Course.PLAIN.apparatus(),
              Course.PLAIN.quantities(),
              Course.PLAIN.headings(),
              Course.PLAIN.tables());
      var findings =
          RuleCatalogue.load().check(Inspection.of(sum(0.5).workbook(), Catalogue.load(), course));

      assertThat(findings).hasSize(1);
      assertThat(findings.get(0).rule().id()).isEqualTo("carried-otherwise");
      assertThat(Findings.found(findings.get(0)))
          .isEqualTo("the uncertainty of \"Reach\", 0.5, fits quadrature");
    }
  }
}
