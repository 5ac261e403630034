package tenthmark.addin.graph;

import com.sun.star.uno.Exception;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.menu.RefusalException;
import tenthmark.measurement.wording.Sentences;

/**
 * The line fitted to points, in cells beside them: a residual for each point, slope and intercept
 * with their uncertainties, and both ends of the line, of the steepest and of the shallowest one.
 * All are formulas, so that they and the graph follow the points.
 */
final class FittedLine {

  /** Rows that it takes. */
  static final int HEIGHT = 7;

  private static final int ENDS = 5;
  private static final int WIDE = 5200;
  private static final int WIDE_NUMBER = 3200;

  private final SheetCells sheet;
  private final PointColumns points;
  private final Sentences texts;
  private final int residuals;
  private final int left;
  private final int top;

  FittedLine(SheetCells sheet, PointColumns points, Sentences texts) {
    this.sheet = sheet;
    this.points = points;
    this.texts = texts;
    this.residuals = points.table().EndColumn + 1;
    this.left = residuals + 2;
    this.top = points.table().StartRow;
  }

  /** The column of its labels. */
  int left() {
    return left;
  }

  int residuals() {
    return residuals;
  }

  /** The column of what a line reaches at its ends. */
  int line(int number) {
    return left + 1 + number;
  }

  int firstEnd() {
    return top + ENDS;
  }

  int lastEnd() {
    return top + ENDS + 1;
  }

  /** Whether the points have the bars that the steepest and the shallowest line go through. */
  boolean hasExtremes() {
    return points.xUncertainty().isPresent() && points.yUncertainty().isPresent();
  }

  /** Refuses to go on where its cells are not free. */
  void needRoom() throws Exception {
    int right = line(2);
    int bottom = Math.max(points.table().EndRow, top + HEIGHT - 1);
    if (!sheet.reaches(right, bottom)) {
      throw new RefusalException("table.no-room");
    }
    if (!sheet.isEmpty(residuals, top, right, bottom)) {
      throw new RefusalException(
          "graph.not-empty", Places.place(residuals, top) + ":" + Places.place(right, bottom));
    }
  }

  /** Writes it. */
  void write() throws Exception {
    writeNumber(0, "graph.slope", "SLOPE");
    writeNumber(1, "graph.slope-uncertainty", "SLOPEERROR");
    writeNumber(2, "graph.intercept", "INTERCEPT");
    writeNumber(3, "graph.intercept-uncertainty", "INTERCEPTERROR");
    put(left, top + ENDS - 1, points.title(points.x(), sheet));
    put(left, firstEnd(), "=MIN(" + points.cells(points.x()) + ")");
    put(left, lastEnd(), "=MAX(" + points.cells(points.x()) + ")");
    writeLine(0, "graph.line", Places.fixed(left + 1, top), Places.fixed(left + 1, top + 2));
    if (hasExtremes()) {
      writeLine(1, "graph.steepest", extreme(1), extreme(2));
      writeLine(2, "graph.shallowest", extreme(3), extreme(4));
    }
    writeResiduals();
    sheet.widen(left, WIDE);
    for (int number = 0; number <= 2; number++) {
      sheet.widen(line(number), WIDE_NUMBER);
    }
  }

  private void writeNumber(int row, String label, String function) throws Exception {
    put(left, top + row, texts.say(label));
    put(left + 1, top + row, "=TENTHMARK.LAB." + function + "(" + points.arguments() + ")");
  }

  private String extreme(int row) {
    return "INDEX(TENTHMARK.LAB.STEEPSHALLOW(" + points.arguments() + ");" + row + ";2)";
  }

  /** Where no line goes through all bars, there is none to draw. */
  private void writeLine(int number, String label, String slope, String intercept)
      throws Exception {
    int column = line(number);
    put(column, top + ENDS - 1, texts.say(label));
    for (int row = firstEnd(); row <= lastEnd(); row++) {
      put(
          column,
          row,
          "=IFERROR(" + intercept + "+" + slope + "*" + Places.fixed(left, row) + ";NA())");
    }
  }

  private void writeResiduals() throws Exception {
    put(residuals, top, texts.say("graph.residual"));
    for (int row = points.firstRow(); row <= points.table().EndRow; row++) {
      String x = Places.place(points.x(), row);
      String y = Places.place(points.y(), row);
      put(
          residuals,
          row,
          "=IF(COUNT(%s;%s)<2;\"\";%s-(%s+%s*%s))"
              .formatted(x, y, y, Places.fixed(left + 1, top + 2), Places.fixed(left + 1, top), x));
    }
  }

  private void put(int column, int row, String content) throws Exception {
    sheet.cell(column, row).setFormula(content);
  }
}
