package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The engine against values that a real Calc has computed: a corpus at random (written by
 * FormulaCorpusIT of the extension) and the places where Calc's arithmetic is its own.
 */
class CalcCorpusTest {

  private static final double AGREEMENT = 1e-13;

  @Test
  void valuesAreThoseOfLibreOffice74() throws IOException {
    List<String> lines = corpus();
    assertThat(lines).hasSizeGreaterThan(2000);
    for (int row = 1; row <= lines.size(); row++) {
      String line = lines.get(row - 1);
      String[] columns = line.split("\t", -1);
      double[] numbers = Arrays.stream(columns, 0, 5).mapToDouble(Double::parseDouble).toArray();
      Corpus.Case formula = new Corpus.Case(row, numbers, columns[5], columns[6]);
      double calc = Double.parseDouble(columns[7]);
      if (Double.isNaN(calc)) {
        assertThatThrownBy(formula::value).as(line).isInstanceOf(FormulaException.class);
      } else {
        assertThat(formula.value()).as(line).isCloseTo(calc, within(AGREEMENT * Math.abs(calc)));
      }
    }
  }

  /** The slopes of the same formulas against those of Hipparchus, whose rules are not ours. */
  @Test
  @Tag("slow")
  void slopesAreThoseOfHipparchus() {
    int compared = 0;
    for (Corpus.Case formula : Corpus.cases(3000, 77)) {
      Optional<Linearised> ours = formula.linearised();
      if (ours.isPresent() && formula.gradient().isPresent()) {
        double[] theirs = formula.gradient().get();
        double largest = Arrays.stream(theirs).map(Math::abs).max().orElse(0);
        assertThat(ours.get().sensitivities())
            .as(formula.formula() + " at " + Arrays.toString(formula.numbers()))
            .containsExactly(theirs, within(1e-9 * (largest + Math.abs(ours.get().value()) + 1)));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(1000);
  }

  // measured in LibreOffice 7.4.7
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.1+0.2-0.3 | 0",
        "0.3-0.1-0.2 | 0",
        "1.000000000000003-1 | 0",
        "1.000000000000004-1 | 3.9968028886505635E-15",
        "1e8+0.1-1e8 | 0.09999999403953552",
        "SUM(1e8;0.1;-1e8) | 0.1",
        "SUM(0.1;0.2;-0.3) | 0",
        "0.1+0.2=0.3 | 1",
        "1=1.000000000000001 | 1",
        "1=1.00000000000001 | 0",
        "0^0 | 1",
        "(-8)^(1/3) | -2",
        "(-32)^-0.2 | -0.5",
        "MOD(0.3;0.1) | 0",
        "MOD(-3;2) | 1",
        "MOD(3;-2) | -1",
        "MOD(7.5;-2) | -0.5",
        "MOD(4.35*100;1) | 0",
        "MOD(-8e15;3) | 1",
        "INT(-2.5) | -3",
        "INT(4.35*100) | 435",
        "INT(2.99999999999999) | 2",
        "INT(2.999999999999999) | 3",
        "INT(1099511627775.9996) | 1099511627776",
        "INT(1099511627777.9996) | 1099511627777",
        "ROUND(2.5;0) | 3",
        "ROUND(-2.5;0) | -3",
        "ROUND(1.005;2) | 1.01",
        "ROUND(1234.5;-2) | 1200",
        "ROUND(2.4;0.7) | 2",
        "ROUNDUP(0.3;1) | 0.3",
        "ROUNDUP(1.000000000001) | 2",
        "ROUNDUP(1.000000000001;0) | 1",
        "ROUNDUP(2238028702631.31;0) | 2238028702630",
        "ROUNDUP(0.123456789012341;12) | 0.123456789013",
        "ROUNDDOWN(2.99999999999999;0) | 3",
        "TRUNC(2.99999999999999) | 2",
        "TRUNC(-2.7) | -2",
        "ATAN2(1;2) | 1.1071487177940904",
        "ATAN2(-1;-0) | -3.141592653589793",
        "ATAN2(-1;0) | 3.141592653589793",
        "SIN(18.4e18) | 0.799538433523745",
        "LOG(8;2) | 3",
        "EXP(-1000) | 0",
        "1e-200*1e-200 | 0",
        "COUNT(1;\"a\";TRUE) | 2",
        "COUNT(1/0;2) | 1",
        "IF(2;;3) | 0",
        "IF(FALSE;5) | 0"
      })
  void arithmeticIsCalcs(String formula, double calc) {
    assertThat(value(formula)).isCloseTo(calc, within(1e-14 * Math.abs(calc)));
  }

  // cell errors in LibreOffice 7.4.7
  @ParameterizedTest
  @ValueSource(
      strings = {
        "1/0",
        "1e308*10",
        "0^-1",
        "(-2)^0.5",
        "(-8)^(2/3)",
        "0.5^2000",
        "1e-160^2",
        "EXP(1000)",
        "LN(0)",
        "LOG(1;1)",
        "LOG(8;0)",
        "SQRT(-1)",
        "ACOS(2)",
        "SIN(1e20)",
        "MOD(10;0)",
        "STDEV(1)",
        "SUM(\"3\")",
        "SUMPRODUCT(1/0)"
      })
  void errorsAreCalcs(String formula) {
    assertThatThrownBy(() -> value(formula)).isInstanceOf(FormulaException.class);
  }

  private static double value(String formula) {
    return new NamedModel(new Formulas().withNames(formula), List.of()).value();
  }

  private static List<String> corpus() throws IOException {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                CalcCorpusTest.class.getResourceAsStream("/calc/formula-corpus.tsv"),
                StandardCharsets.UTF_8))) {
      return reader.lines().skip(1).toList();
    }
  }
}
