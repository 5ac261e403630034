package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Grid.Stored;

/** Workbooks from offices that are not English. Numbers are invented. */
class OtherLanguagesTest {

  private static final String AGREEMENT =
      "Verträglich: Die Werte unterscheiden sich um 0,5, das ist das 0,5-Fache der 1, die ihre"
          + " Unsicherheiten zulassen.";

  @Nested
  class Texts {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "172.5 ± 0.5 mm",
          "172,5 ± 0,5 mm",
        })
    void mayHaveEitherDecimalSign(String stored) {
      assertThat(Findings.in(recorded(stored))).doesNotContain("C1 result-stale");
    }

    @ParameterizedTest
    @ValueSource(strings = {"172,4 ± 0,5 mm", "172;5 ± 0;5 mm", "172,5 ± 0,5 cm"})
    void areStaleAsNoOfficeWritesThem(String stored) {
      assertThat(Findings.in(recorded(stored))).contains("C1 result-stale");
    }

    @Test
    void mayBeInAnyLanguageAndFollowedInIt() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Vergleich")
                      .row(new Stored("=LAB_AGREE(172.5,0.5,172,0.5)", AGREEMENT))
                      .row(
                          new Stored("=IF(LEFT(A1,11)=\"Verträglich\",\"gut\",\"nochmal\")", "gut"))
                      .row(
                          new Stored("=\"Gruppe 1: \"&LAB_RESULT(5,0.25)", "Gruppe 1: 5,0 ± 0,3"))))
          .isEmpty();
    }

    @Test
    void thatExplainACellMaySayWhatOnlyThatOfficeShows() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Warum")
                      .row(5, new Stored("=LAB_WHY(A1)", "A1 zeigt Err:502: ein Fehler."))))
          .isEmpty();
    }

    @Test
    void areStaleWhereTheClaimIsAnother() {
      Finding finding =
          Findings.onlyInCells(
              Grid.sheet("Vergleich").row(new Stored("=LAB_AGREE(172.5,0.1,172,0.1)", AGREEMENT)));
      assertThat(finding.rule().id()).isEqualTo("result-stale");
      assertThat(Findings.expected(finding)).startsWith("\"Disagree: the values differ by 0.5");
    }

    /** Calc joins numbers to texts with its own decimal sign. */
    @Test
    void mayJoinNumbersWithADecimalComma() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Daten").row(0.5, new Stored("=\"v = \"&A1&\" m/s\"", "v = 0,5 m/s"))))
          .isEmpty();
    }

    private static Grid recorded(String stored) {
      return Grid.sheet("Daten").row(172.5, 0.5, new Stored("=LAB_RESULT(A1,B1,\"mm\")", stored));
    }
  }

  @Nested
  class Tables {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "Messgröße | Formelzeichen | Messwert | Einheit | Teilung | Ablesung | Messobjekt"
              + " | Messunsicherheit | Begründung",
          "Grandeur | Symbole | Valeur | Unité | Échelon | Lecture | Objet | Incertitude"
              + " | Justification",
          "Magnitud | Símbolo | Valor | Unidad | División | Lectura | Objeto | Incertidumbre"
              + " | Justificación",
        })
    void areReadByTheirHeadings(
        String quantity,
        String symbol,
        String value,
        String unit,
        String division,
        String reading,
        String physical,
        String uncertainty,
        String rationale) {
      Grid grid =
          Grid.sheet("1")
              .row(
                  quantity,
                  symbol,
                  value,
                  unit,
                  division,
                  reading,
                  physical,
                  uncertainty,
                  rationale)
              .row("Kurbel", "a", 172.5, "mm", 1, 0.5, "0,25 mm", 0.75, "1 mm, 2 x; 0,25 mm")
              .row("Griff", "g", 128.0, "mm", 1, 0.5, 1.5, 7, null);
      assertThat(Findings.in(grid))
          .containsExactlyInAnyOrder("H3 total-differs", "I3 rationale-missing");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "mit der Stoppuhr gemessen, acht Läufe",
          "chronométrée à la main, huit essais",
          "cronometrado a mano, ocho vueltas"
        })
    void tellThatATimeWasTakenByHand(String rationale) {
      assertThat(
              Findings.in(
                  Grid.sheet("1")
                      .row(
                          "Messgröße", "Wert", "Einheit", "Zeitnahme", "Unsicherheit", "Begründung")
                      .row("Umlauf", 1.25, "s", null, 0.01, rationale)))
          .contains("D2 reaction-missing");
    }
  }
}
