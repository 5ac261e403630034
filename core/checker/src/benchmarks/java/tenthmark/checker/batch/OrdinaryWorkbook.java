package tenthmark.checker.batch;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/**
 * The workbook of one invented student of a bicycle-workshop course: a sheet with 40 records and
 * one with calculations, 300 formulas in all, each with its stored result.
 */
final class OrdinaryWorkbook {

  static final int RECORDS = 40;
  static final int FORMULAS = 300;

  private static final Object[] HEADINGS = {
    "Quantity",
    "Symbol",
    "Value",
    "Unit",
    "Division",
    "Spacing",
    "Ends",
    "Reading",
    "Physical",
    "Uncertainty",
    "Result",
    "Relative",
    "Rationale"
  };

  private final Random random;
  private final Catalogue functions;

  OrdinaryWorkbook(long seed, Catalogue functions) {
    this.random = new Random(seed);
    this.functions = functions;
  }

  Path write(Path file) {
    long seed = random.nextLong();
    Workbook plain = grid(seed, null).workbook();
    return grid(seed, Evaluation.of(plain, functions)).xlsx(file);
  }

  /** With stored results where they are known already. */
  private Grid grid(long seed, Evaluation results) {
    Random lengths = new Random(seed);
    Grid grid = Grid.sheet("Records").row(HEADINGS);
    for (int i = 0; i < RECORDS; i++) {
      int row = i + 2;
      double value = Math.round(1000 + 8000 * lengths.nextDouble()) / 10.0;
      grid.row(
          "Spoke " + (i + 1),
          "s" + (i + 1),
          value,
          "mm",
          1,
          "wide",
          2,
          formula(results, "Records", 7, row, "LAB_READING(E%1$d,F%1$d,G%1$d)"),
          0.5,
          formula(results, "Records", 9, row, "LAB_TOTAL(H%1$d:I%1$d)"),
          formula(results, "Records", 10, row, "LAB_RESULT(C%1$d,J%1$d,D%1$d)"),
          formula(results, "Records", 11, row, "J%1$d/C%1$d"),
          "Marks 1 mm apart, tenths judged by eye at both ends; the head of the spoke is round.");
    }
    grid.andSheet("Results").row("Calculations", null, null);
    for (int i = 0; i < RECORDS; i++) {
      int row = i + 2;
      grid.row(
          formula(results, "Results", 0, row, "PI()*Records!C%1$d^2/4"),
          formula(results, "Results", 1, row, "SQRT(ABS(A%1$d))*COS(RADIANS(30))"),
          formula(
              results, "Results", 2, row, "IF(B%1$d>100,B%1$d/2,B%1$d)+SUM(Records!C$2:C%1$d)"));
    }
    grid.row();
    String[] last = {
      "AVERAGE(Records!C2:C41)",
      "STDEV(Records!C2:C41)",
      "A43/SQRT(COUNT(Records!C2:C41))",
      "LAB_REPEATS(Records!C2:C41)",
      "MAX(Records!C2:C41)-MIN(Records!C2:C41)",
      "SUMPRODUCT(Records!C2:C41,Records!J2:J41)",
      "LAB_CARRY(A2,Records!C2,Records!J2)",
      "LAB_CARRY(B3,Records!C3,Records!J3)",
      "LAB_CARRY(C4,Records!C2:C4,Records!J2:J4)",
      "SLOPE(Records!C2:C41,A2:A41)",
      "INTERCEPT(Records!C2:C41,A2:A41)",
      "LAB_SLOPE(A2:A41,Records!C2:C41)",
      "LAB_GAP(Records!C2,Records!J2,Records!C3,Records!J3)",
      "ROUND(A43,1)",
      "MEDIAN(Records!C2:C41)",
      "COUNT(Records!C2:C41)",
      "SUMSQ(Records!J2:J41)",
      "EXP(-A43/1000)",
      "LN(A43)",
      "A43*0.01"
    };
    for (int i = 0; i < last.length; i++) {
      grid.row(formula(results, "Results", 0, 43 + i, last[i]));
    }
    return grid;
  }

  private static Object formula(
      Evaluation results, String sheet, int column, int row, String formula) {
    String text = String.format(Locale.ROOT, formula, row);
    if (results != null
        && results.at(new CellAddress(sheet, column, row - 1)) instanceof Outcome.Known known) {
      if (known.value() instanceof Value.Numeric number) {
        return new Grid.Stored("=" + text, number.number());
      }
      if (known.value() instanceof Value.Text result) {
        return new Grid.Stored("=" + text, result.text());
      }
    }
    return "=" + text;
  }

  static long formulas(Workbook workbook) {
    return workbook.sheets().stream()
        .flatMap(sheet -> sheet.cells())
        .map(Cell::content)
        .filter(Content.Formula.class::isInstance)
        .count();
  }
}
