package tenthmark.measurement.explanation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Grid;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/** The explanation of a cell in a table of a wheel's rim. Numbers are invented. */
class ExplainerTest {

  private static final Sentences ENGLISH = Sentences.english();

  private final Grid sheet =
      new Grid()
          .put("A1", "quantity")
          .put("B1", "value")
          .put("C1", "uncertainty")
          .put("A2", "rim mass / kg")
          .put("B2", 0.42)
          .put("C2", 0.005)
          .put("A3", "rim radius / m")
          .put("B3", 0.311)
          .put("C3", 0.011)
          .put("A4", "inertia / (kg m²)")
          .put("B4", "=B2*B3^2")
          .shows("B4", 0.04062)
          .put("E1", "reading")
          .put("F1", "physical")
          .put("G1", "instrument")
          .put("E2", 0.5)
          .put("F2", 1.5);

  private Explanation explained(String cell) {
    return explained(cell, ENGLISH);
  }

  private Explanation explained(String cell, Sentences sentences) {
    return new Explainer(Catalogue.load()).explain(sheet, Grid.address(cell), sentences);
  }

  private Contributions contributions(String formula) {
    return explained(put(formula)).contributions().orElseThrow();
  }

  private String put(String formula) {
    sheet.put("D9", formula).shows("D9", 1);
    return "D9";
  }

  @Nested
  class ContributionTables {

    /** By hand: u/m = 0.005/0.42, u/r = 2*0.011/0.311, both of 0.0406218 kg m². */
    @Test
    void showTheInputsOfACarriedUncertaintyByTheirHeadings() {
      Contributions table = contributions("=LAB_CARRY(B4;B2:B3;C2:C3)");
      assertThat(table.function()).isEqualTo("LAB_CARRY");
      assertThat(table.headings())
          .containsExactly(
              "input", "value", "uncertainty", "sensitivity coefficient", "contribution", "share");
      assertThat(table.rows())
          .containsExactly(
              List.of(
                  "B2 (rim mass / kg, value)", "0.42", "0.005", "0.09672", "0.0004836", "14.4 %"),
              List.of(
                  "B3 (rim radius / m, value)", "0.311", "0.011", "0.2612", "0.002874", "85.6 %"),
              List.of("result", "0.04062", "0.003357", "", "0.003357", "100 %"));
    }

    @Test
    void areTheSameForTheFunctionsThatShareTheirArguments() {
      assertThat(contributions("=LAB_CARRYTABLE(B4;B2:B3;C2:C3)").rows())
          .isEqualTo(contributions("=LAB_CARRY(B4;B2:B3;C2:C3)").rows());
    }

    @Test
    void nameTheInputsOfAFormulaThatIsGivenAsText() {
      sheet.put("E9", "m").put("E10", "r");
      assertThat(contributions("=LAB_CARRYTEXT(\"m*r^2\";E9:E10;B2:B3;C2:C3)").rows())
          .extracting(row -> row.get(0))
          .containsExactly("m", "r", "result");
    }

    @Test
    void showTheSizesOfATotalByTheirHeadings() {
      assertThat(contributions("=2*LAB_TOTAL(E2:G2;\"quadrature\")").rows())
          .containsExactly(
              List.of("E2 (rim mass / kg, reading)", "0.5", "10 %"),
              List.of("F2 (rim mass / kg, physical)", "1.5", "90 %"),
              List.of("total", "1.581", "100 %"));
    }

    @Test
    void showTheRowsOfABudget() {
      sheet.put("E20", "reading").put("F20", "millimetre marks").put("G20", 0.5);
      Contributions table = contributions("=LAB_RATIONALE(E20:G20;\"mm\")");
      assertThat(table.headings()).containsExactly("kind", "due to", "size", "share");
      assertThat(table.rows())
          .containsExactly(
              List.of("reading", "millimetre marks", "0.5", "100 %"),
              List.of("total", "", "0.5", "100 %"));
    }

    @Test
    void areThereForNothingElse() {
      assertThat(explained("B4").contributions()).isEmpty();
      assertThat(explained(put("=LAB_READING(1)")).contributions()).isEmpty();
      assertThat(explained(put("=LAB_TOTAL(E2:G2;\"nonsense\")")).contributions()).isEmpty();
    }
  }

  @Nested
  class Problems {

    @Test
    void comeWithAdviceAndTheFunctionToReadAbout() {
      sheet.put("D9", "=LAB_READING(-1)").showsError("D9", "Err:502");
      Explanation explanation = explained("D9");
      assertThat(explanation.problem())
          .hasValueSatisfying(
              problem ->
                  assertThat(problem.fix())
                      .startsWith("Change this argument, or the cell that it comes from"));
      assertThat(explanation.function()).contains("LAB_READING");
      assertThat(explanation.formula()).isEqualTo("=LAB_READING(-1)");
    }

    @ParameterizedTest
    @EnumSource
    void haveAdviceForEachKindInEachLanguage(Cause.Kind kind) {
      for (Language language : Language.values()) {
        Sentences sentences = Sentences.in(language, DecimalSign.POINT);
        assertThat(sentences.knows("fix." + kind)).as("%s %s", language, kind).isTrue();
      }
    }

    @ParameterizedTest
    @EnumSource
    void ofEachKindOfErrorAreDescribed(ErrorKind kind) {
      assertThat(kind.meaning(ENGLISH)).endsWith(".");
      assertThat(kind.fix(ENGLISH)).endsWith(".");
      assertThat(ErrorKind.named(kind.names().get(0))).contains(kind);
    }
  }

  @Nested
  class InWords {

    static Stream<String> functions() {
      return new Formulas().names().stream();
    }

    @ParameterizedTest
    @MethodSource("functions")
    void everyFunctionOfTheEngineIsSaid(String function) {
      for (Language language : Language.values()) {
        Sentences sentences = Sentences.in(language, DecimalSign.POINT);
        assertThat(
                Stream.of("", ".0", ".1", ".2", ".3")
                    .anyMatch(count -> sentences.knows("words." + function + count)))
            .as("%s %s", language, function)
            .isTrue();
      }
    }

    @Test
    void aFormulaThatIsFollowedIsSaidToo() {
      assertThat(explained(put("=LAB_CARRY(B4;B2:B3;C2:C3)")).words())
          .element(1)
          .isEqualTo("B4 is B2 (rim mass / kg, value) times B3 (rim radius / m, value) squared.");
    }

    @Test
    void namesAreSaidWithWhatTheyStandFor() {
      sheet.name("diam", "2*$B$3").name("gee", "9.81").name("left", "C9", "D9").put("C9", 2);
      assertThat(explained(put("=diam*gee+left")).words())
          .containsExactly(
              "D9 is diam times gee plus left.",
              "The name diam stands for 2 times B3 (rim radius / m, value).",
              "The name gee stands for 9.81.",
              "The name left stands for C9 (uncertainty).");
    }

    @Test
    void aResultThatIsGivenByNameIsFollowedToo() {
      sheet.name("inertia", "$B$4");
      assertThat(explained(put("=LAB_CARRY(inertia;B2:B3;C2:C3)")).words())
          .contains("B4 is B2 (rim mass / kg, value) times B3 (rim radius / m, value) squared.");
      assertThat(contributions("=LAB_CARRY(inertia;B2:B3;C2:C3)").rows()).hasSize(3);
    }

    @Test
    void theOfficesOwnLanguageAndDecimalSignAreUsed() {
      Sentences german = Sentences.in(Language.GERMAN, DecimalSign.COMMA);
      assertThat(explained(put("=SQRT(B2/1.5)"), german).words())
          .containsExactly(
              "D9 ist die Quadratwurzel aus (B2 (rim mass / kg, value) geteilt durch 1,5).");
    }

    @Test
    void functionsAreDescribedInTheLanguage() {
      Sentences german = Sentences.in(Language.GERMAN, DecimalSign.COMMA);
      assertThat(explained(put("=LAB_READING(1)"), german).words().get(1))
          .startsWith("LAB_READING: ")
          .doesNotContain("Gives");
    }

    @Test
    void bracketsStandWhereTheFormulaNeedsThem() {
      Object[][] said = {
        {"=(H5+H6)*H7", "(H5 plus H6) times H7"},
        {"=H5+H6*H7^2", "H5 plus H6 times H7 squared"},
        {"=H5/(H6*H7)", "H5 divided by (H6 times H7)"},
        {"=-H5^3", "minus H5 to the power of 3"},
        {
          "=IF(H5>=2;SUM(H5:H7;1);MAX(H5;H6))",
          "the sum of the cells H5:H7 and 1 if (H5 is at least 2), otherwise the largest of H5 and"
              + " H6"
        },
        {"=LOG(H5)+LOG(H5;2)", "the logarithm to base 10 of H5 plus the logarithm to base 2 of H5"},
        {"=ROUND(H5;2)", "H5 rounded to 2 decimals"},
        {"=\"x = \"&H5", "\"x = \" followed by H5"},
        {"=INDEX(H5:H7;2)", "entry 2 of the cells H5:H7"},
        {"=MMULT(H5:H7;2)", "MMULT of the cells H5:H7 and 2"}
      };
      Arrays.stream(said)
          .forEach(
              pair ->
                  assertThat(explained(put((String) pair[0])).words().get(0))
                      .isEqualTo("D9 is " + pair[1] + "."));
    }
  }
}
