package tenthmark.checker.reading.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
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
    "δm, m, '', DELTA",
    "10 T in s, 10 T, s, NONE",
    "µ = m/L in g/m, µ, g/m, NONE",
    "N/t in 1/min, N/t, 1/min, NONE",
    "ν² / 10³ Hz², ν², 10³ Hz², NONE",
    "coefficient (10⁻⁶/K), coefficient, 10⁻⁶/K, NONE",
    "x (Skt.), x, Skt., NONE",
    "ln U, ln U, 1, NONE",
    "p/p₀, p/p₀, 1, NONE",
    "part Q/Ec, part Q/Ec, '', NONE",
    "turns per second, '', 1/s, NONE",
    "(2) Temperature (K), Temperature, K, NONE",
    "dU (V), dU, V, NONE",
    "u/x (%), x, %, SURE"
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
    "Unidad, UNIT",
    "lect., READING",
    "apar., INSTRUMENT",
    "expanded uncertainty, UNCERTAINTY",
    "gravedad g (dada), ACCEPTED"
  })
  void canStandForRoles(String text, Role role) {
    assertThat(GRAMMAR.read(text).orElseThrow().roles()).contains(role);
  }

  @ParameterizedTest
  @CsvSource({
    "U (k=2), '', UNCERTAINTY, SURE",
    "U(x) (k = 2), x, UNCERTAINTY, SURE",
    "'uncertainty of m, k=2', m, UNCERTAINTY, SURE",
    "U / V, U, , NONE"
  })
  void takeACoverageFactorForAnUncertainty(String text, String name, Role role, Heading.Mark mark) {
    Heading heading = GRAMMAR.read(text).orElseThrow();

    assertThat(heading.name()).isEqualTo(name);
    assertThat(heading.roles()).isEqualTo(role == null ? Set.of() : Set.of(role));
    assertThat(heading.mark()).isEqualTo(mark);
  }

  /** Ten periods in seconds, not ten tesla times an inch and a second. */
  @Test
  void haveThePrepositionBeforeAUnit() {
    Heading heading = GRAMMAR.read("10 T in s").orElseThrow();

    assertThat(heading.name()).isEqualTo("10 T");
    assertThat(heading.unit()).isEqualTo("s");
    assertThat(GRAMMAR.isUnit("m in g")).isFalse();
  }

  /** Se differs in Spanish is no standard error. */
  @Test
  void holdSmallWordsThatAreAbbreviationsElsewhere() {
    assertThat(GRAMMAR.read("los dos se diferencian en").orElseThrow().mark())
        .isEqualTo(Heading.Mark.NONE);
    assertThat(GRAMMAR.read("SE (mm)").orElseThrow().mark()).isEqualTo(Heading.Mark.SURE);
  }

  @ParameterizedTest
  @CsvSource({"12.3", "0.5 mm", "12.30 ± 0.05 cm"})
  void areNoAmounts(String text) {
    assertThat(GRAMMAR.read(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"t (s)", "T₀", "m in g", "–", "Q/Ec", "x / mm"})
  void areNoUnits(String text) {
    assertThat(GRAMMAR.isUnit(text)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"mm", "[mm]", "g/cm³", "clicks/s", "10³ Hz²", "1/min"})
  void areUnits(String text) {
    assertThat(GRAMMAR.isUnit(text)).isTrue();
  }

  /** The search for blanks at an end takes the square of their number. */
  @Test
  void aTextOfManyBlanksIsNoHeadingAndNotSearched() {
    HeadingGrammar grammar = new HeadingGrammar(Vocabulary.STANDARD);

    assertThat(grammar.read("Value" + " ".repeat(100) + "(mm)")).isPresent();
    assertThat(grammar.read("Value" + " ".repeat(30_000) + "(mm)")).isEmpty();
    assertThat(grammar.isUnit("mm" + " ".repeat(30_000))).isFalse();
  }
}
