package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;
import tenthmark.measurement.formula.Corpus;
import tenthmark.measurement.formula.FormulaException;

/** The formula engine against a real Calc: the same formulas, the same inputs, the same values. */
@ExtendWith(OfficeExtension.class)
class FormulaCorpusIT {

  private static final int CASES = 4000;
  private static final double AGREEMENT = 1e-13;

  @Test
  void theEngineComputesWhatCalcComputes(Office office) throws Exception {
    List<Corpus.Case> cases = Corpus.cases(CASES, 2026);
    Object[][] calc = computed(office, cases);
    List<String> differences = new ArrayList<>();
    List<String> written = new ArrayList<>();
    double worst = 0;
    int defined = 0;
    for (int i = 0; i < CASES; i++) {
      Corpus.Case formula = cases.get(i);
      double ours = value(formula);
      double theirs = calc[i][0] instanceof Double number ? number : Double.NaN;
      double gap = gap(ours, theirs);
      if (gap > AGREEMENT) {
        differences.add(formula.formula() + ": " + ours + " and in Calc " + theirs);
      } else {
        worst = Math.max(worst, gap);
      }
      defined += Double.isNaN(theirs) ? 0 : 1;
      written.add(line(formula, theirs));
    }
    Files.write(Path.of("target", "formula-corpus.tsv"), written);
    System.out.println(
        CASES + " formulas, " + defined + " of them defined; largest relative difference " + worst);
    assertThat(differences).isEmpty();
    assertThat(defined).isGreaterThan(2000);
  }

  private static Object[][] computed(Office office, List<Corpus.Case> cases) throws Exception {
    String[][] contents = cases.stream().map(FormulaCorpusIT::contents).toArray(String[][]::new);
    try (Workbook workbook = office.create()) {
      workbook.setAll("A1:G" + cases.size(), contents);
      return workbook.values("G1:G" + cases.size());
    }
  }

  private static String[] contents(Corpus.Case formula) {
    List<String> row = new ArrayList<>();
    Arrays.stream(formula.numbers()).mapToObj(Double::toString).forEach(row::add);
    row.add(formula.note());
    row.add(formula.formula());
    return row.toArray(String[]::new);
  }

  /** The engine's value, NaN where there is none. */
  private static double value(Corpus.Case formula) {
    try {
      return formula.value();
    } catch (FormulaException undefined) {
      return Double.NaN;
    }
  }

  private static double gap(double x, double y) {
    if (Double.isNaN(x) || Double.isNaN(y)) {
      return Double.isNaN(x) && Double.isNaN(y) ? 0 : Double.POSITIVE_INFINITY;
    }
    return x == y ? 0 : Math.abs(x - y) / Math.max(Math.abs(x), Math.abs(y));
  }

  private static String line(Corpus.Case formula, double calc) {
    return String.join("\t", String.join("\t", contents(formula)), Double.toString(calc));
  }
}
