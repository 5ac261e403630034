package tenthmark.samples;

import java.util.List;
import tenthmark.samples.book.SampleBook;
import tenthmark.samples.book.SheetWriter;
import tenthmark.samples.book.Styles;

/** The spring rate of a brake lever: the slope of a line through points with error bars. */
final class LeverSheet {

  private static final double[][] PULLS = {
    {2.1, 4.9}, {4.0, 9.8}, {6.2, 14.7}, {8.1, 19.6}, {10.3, 24.5}, {12.2, 29.4}
  };
  private static final int FIRST_ROW = 4;

  private LeverSheet() {}

  static void write(SampleBook book) {
    Styles styles = book.styles();
    SheetWriter sheet = book.sheet("Lever", 34, 18, 18, 18, 18, 50);
    sheet.put("A1", "Brake lever: spring rate from a line", styles.title());
    book.headings(
        sheet, 3, List.of("Pull", "Travel (mm)", "Force (N)", "u(travel) (mm)", "u(force) (N)"));
    int row = FIRST_ROW;
    for (double[] pull : PULLS) {
      book.row(
          sheet,
          row,
          List.of(
              row - FIRST_ROW + 1,
              pull[0],
              pull[1],
              "=LAB_READING(1,\"wide\",2)",
              "=LAB_DISPLAY(0.1,C" + row + ",0.5,1)"));
      row++;
    }
    String points = "B4:B9,C4:C9,D4:D9,E4:E9";

    book.headings(
        sheet, 11, List.of("Quantity", "Value", "Uncertainty", "Unit", "Result", "Rationale"));
    book.row(
        sheet,
        12,
        List.of(
            "Brake lever, spring rate",
            "=LAB_SLOPE(" + points + ")",
            "=LAB_SLOPEERROR(" + points + ")",
            "N/mm"));
    sheet.put("E12", "=LAB_RESULT(B12,C12,D12)", styles.result());
    sheet.put(
        "F12",
        "From the line below: a tenth of the ruler's division at both ends for the travel, the"
            + " maker's specification of the force gauge for the force.",
        styles.remark());

    sheet.put("A14", "Best line", styles.title());
    sheet.putMatrix("A15:B22", "=LAB_LINE(" + points + ")", styles.cell());
    sheet.put("A24", "Steepest and shallowest line through all error bars", styles.title());
    sheet.putMatrix("A25:B32", "=LAB_STEEPSHALLOW(" + points + ")", styles.cell());
  }
}
