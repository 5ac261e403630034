package tenthmark.addin.graph;

import com.sun.star.awt.Point;
import com.sun.star.awt.Rectangle;
import com.sun.star.beans.XPropertySet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import java.util.Optional;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;

/** Draws the selected points with the line fitted to them, and below it what is left over. */
public final class Graphs {

  private static final int WIDTH = 15000;
  private static final int HEIGHT = 9500;
  private static final int HEIGHT_OF_RESIDUALS = 4200;

  private final Workplace workplace;
  private final SheetCells sheet;
  private final PointColumns points;
  private final FittedLine line;

  private Graphs(Workplace workplace, SheetCells sheet, PointColumns points) {
    this.workplace = workplace;
    this.sheet = sheet;
    this.points = points;
    this.line = new FittedLine(sheet, points, workplace.texts());
  }

  /** Draws those at the selected cells, or of the table in which a single one is selected. */
  public static void draw(Workplace workplace) throws Exception {
    CellRangeAddress selected =
        workplace.spreadsheet().selection().orElseThrow(() -> new RefusalException("cells.none"));
    SheetCells sheet = workplace.spreadsheet().sheet(selected.Sheet);
    workplace.refuseUnchangeable(sheet);
    boolean one =
        selected.StartColumn == selected.EndColumn && selected.StartRow == selected.EndRow;
    CellRangeAddress table =
        one ? sheet.regionAt(selected.StartColumn, selected.StartRow) : selected;
    Graphs graphs = new Graphs(workplace, sheet, PointColumns.of(table, sheet));
    graphs.line.needRoom();
    workplace.spreadsheet().change(workplace.title(), graphs::draw);
  }

  private void draw() throws Exception {
    line.write();
    Point corner = sheet.position(line.left(), points.table().StartRow + FittedLine.HEIGHT);
    drawPoints(new Rectangle(corner.X, corner.Y, WIDTH, HEIGHT));
    drawResiduals(new Rectangle(corner.X, corner.Y + HEIGHT, WIDTH, HEIGHT_OF_RESIDUALS));
  }

  private void drawPoints(Rectangle place) throws Exception {
    XCellRange x = column(points.x());
    XCellRange y = column(points.y());
    Graph graph = Graph.on(sheet, place, y, workplace);
    XPropertySet series = graph.points(x, y, sheet.range(points.y(), top(), points.y(), top()));
    bars(graph, series, "x", points.xUncertainty());
    bars(graph, series, "y", points.yUncertainty());
    XCellRange ends = sheet.range(line.left(), line.firstEnd(), line.left(), line.lastEnd());
    graph.line(ends, end(0), label(0));
    if (line.hasExtremes()) {
      graph.dashed(ends, end(1), label(1));
      graph.dashed(ends, end(2), label(2));
    }
    graph.axes(points.title(points.x(), sheet), points.title(points.y(), sheet));
    graph.legend(true);
  }

  private void drawResiduals(Rectangle place) throws Exception {
    XCellRange residuals = column(line.residuals());
    Graph graph = Graph.on(sheet, place, residuals, workplace);
    graph.points(
        column(points.x()),
        residuals,
        sheet.range(line.residuals(), top(), line.residuals(), top()));
    graph.axes(points.title(points.x(), sheet), workplace.texts().say("graph.residual"));
    graph.legend(false);
  }

  private void bars(Graph graph, XPropertySet series, String axis, Optional<Integer> column)
      throws Exception {
    if (column.isPresent()) {
      graph.bars(series, axis, column(column.get()));
    }
  }

  private int top() {
    return points.table().StartRow;
  }

  private XCellRange column(int column) throws Exception {
    return sheet.range(column, points.firstRow(), column, points.table().EndRow);
  }

  private XCellRange end(int number) throws Exception {
    return sheet.range(line.line(number), line.firstEnd(), line.line(number), line.lastEnd());
  }

  private XCellRange label(int number) throws Exception {
    int row = line.firstEnd() - 1;
    return sheet.range(line.line(number), row, line.line(number), row);
  }
}
