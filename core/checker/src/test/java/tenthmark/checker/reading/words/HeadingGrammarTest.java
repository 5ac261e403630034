package tenthmark.checker.reading.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headings as people write them. */
class HeadingGrammarTest {

  private static final HeadingGrammar GRAMMAR = new HeadingGrammar(Vocabulary.STANDARD);

  @ParameterizedTest
  @CsvSource({
    "R (Ω), R, Ω, NONE",
    "ΔR (Ω), R, Ω, DELTA",
    "U / V, U, V, NONE",
    "u(x), x, '', SURE",
    "Mass (g), Mass, g, NONE",
    "Zeit in s, Zeit, s, NONE",
    "longueur (mm), longueur, mm, NONE",
    "Fuerza [N], Fuerza, N, NONE",
    "ln(U / V), ln(U/V), 1, NONE",
    "t / s, t, s, NONE",
    "δm, m, '', DELTA"
  })
  void nameQuantityAndUnit(String text, String name, String unit, Heading.Mark mark) {
    Heading heading = GRAMMAR.read(text).orElseThrow();

    assertThat(heading.name()).isEqualTo(name);
    assertThat(heading.unit()).isEqualTo(unit);
    assertThat(heading.mark()).isEqualTo(mark);
  }

  @ParameterizedTest
  @CsvSource({
    "Uncertainty (g), UNCERTAINTY",
    "Unc., UNCERTAINTY",
    "Std. dev. of the mean, UNCERTAINTY",
    "Standardabweichung, STATISTIC",
    "Instrument uncertainty, INSTRUMENT",
    "incertitude de lecture, READING",
    "Pourquoi cette incertitude, RATIONALE",
    "percent error, COMPARISON",
    "Literaturwert, ACCEPTED",
    "promedio, MEAN",
    "Unidad, UNIT"
  })
  void canStandForRoles(String text, Role role) {
    assertThat(GRAMMAR.read(text).orElseThrow().roles()).contains(role);
  }

  @ParameterizedTest
  @CsvSource({"12.3", "0.5 mm", "12.30 ± 0.05 cm"})
  void areNoAmounts(String text) {
    assertThat(GRAMMAR.read(text)).isEmpty();
  }
}
