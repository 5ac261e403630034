package tenthmark.addin.document;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.Point;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.CellInsertMode;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangeMovement;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetAnnotation;
import com.sun.star.sheet.XSheetAnnotations;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.table.XTableCharts;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.text.XSimpleText;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import com.sun.star.util.XMergeable;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The cells of one sheet; columns and rows are counted from 0. */
public final class SheetCells {

  private static final int ANY_CONTENT =
      CellFlags.VALUE
          | CellFlags.DATETIME
          | CellFlags.STRING
          | CellFlags.FORMULA
          | CellFlags.ANNOTATION;

  private final XSpreadsheet sheet;

  SheetCells(XSpreadsheet sheet) {
    this.sheet = sheet;
  }

  /** Whether its cells may not be changed. */
  public boolean isProtected() {
    return queryInterface(XProtectable.class, sheet).isProtected();
  }

  /** Whether a column and a row are on the sheet. */
  public boolean reaches(int column, int row) {
    CellRangeAddress all = queryInterface(XCellRangeAddressable.class, sheet).getRangeAddress();
    return column <= all.EndColumn && row <= all.EndRow;
  }

  /** The cells of a rectangle. */
  public XCellRange range(int left, int top, int right, int bottom) throws Exception {
    return sheet.getCellRangeByPosition(left, top, right, bottom);
  }

  /** One cell. */
  public XCell cell(int column, int row) throws Exception {
    return sheet.getCellByPosition(column, row);
  }

  /** One cell by its place, such as B4. */
  public XCell cell(String place) throws Exception {
    return sheet.getCellRangeByName(place).getCellByPosition(0, 0);
  }

  /** The cells that the formula of a cell fills: those of a matrix, or the cell alone. */
  public CellRangeAddress arrayAt(int column, int row) throws Exception {
    XSheetCellCursor cursor =
        sheet.createCursorByRange(
            queryInterface(XSheetCellRange.class, range(column, row, column, row)));
    cursor.collapseToCurrentArray();
    return queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress();
  }

  /** The cells around one that are parted from the rest by empty rows and columns. */
  public CellRangeAddress regionAt(int column, int row) throws Exception {
    XSheetCellCursor cursor =
        sheet.createCursorByRange(
            queryInterface(XSheetCellRange.class, range(column, row, column, row)));
    cursor.collapseToCurrentRegion();
    return queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress();
  }

  /** How many numbers a part of a column holds. */
  public int numbers(int column, int top, int bottom) throws Exception {
    int numbers = 0;
    for (Object[] row :
        queryInterface(XCellRangeData.class, range(column, top, column, bottom)).getDataArray()) {
      numbers += row[0] instanceof Double ? 1 : 0;
    }
    return numbers;
  }

  /** Whether a cell holds a number. */
  public boolean isNumber(int column, int row) throws Exception {
    return numbers(column, row, row) == 1;
  }

  /** Where a cell begins on the sheet, in hundredths of a millimetre. */
  public Point position(int column, int row) throws Exception {
    return (Point)
        queryInterface(XPropertySet.class, cell(column, row)).getPropertyValue("Position");
  }

  /** The charts on the sheet. */
  public XTableCharts charts() {
    return queryInterface(XTableChartsSupplier.class, sheet).getCharts();
  }

  /** The formula of a cell in English; that of a matrix without its braces. */
  public String formula(int column, int row) throws Exception {
    return cell(column, row).getFormula().replaceAll("^\\{|}$", "");
  }

  /** Empties a rectangle; the look of its cells stays. */
  public void clear(CellRangeAddress cells) throws Exception {
    queryInterface(
            XSheetOperation.class,
            range(cells.StartColumn, cells.StartRow, cells.EndColumn, cells.EndRow))
        .clearContents(CellFlags.VALUE | CellFlags.DATETIME | CellFlags.STRING | CellFlags.FORMULA);
  }

  /** The comments on its cells. */
  public List<Comment> comments() throws Exception {
    XIndexAccess all = queryInterface(XIndexAccess.class, annotations());
    List<Comment> comments = new ArrayList<>();
    for (int i = 0; i < all.getCount(); i++) {
      XSheetAnnotation one = queryInterface(XSheetAnnotation.class, all.getByIndex(i));
      CellAddress place = one.getPosition();
      String text = queryInterface(XSimpleText.class, one).getString();
      comments.add(new Comment(place.Column, place.Row, text));
    }
    return comments;
  }

  /** Whether a cell has a comment. */
  public boolean hasComment(XCell cell) throws Exception {
    CellAddress place = queryInterface(XCellAddressable.class, cell).getCellAddress();
    return comments().stream()
        .anyMatch(comment -> comment.column() == place.Column && comment.row() == place.Row);
  }

  /** Puts a comment on a cell that has none. */
  public void comment(XCell cell, String text) {
    annotations().insertNew(queryInterface(XCellAddressable.class, cell).getCellAddress(), text);
  }

  /** Takes a comment away. */
  public void remove(Comment comment) throws Exception {
    annotations().removeByIndex(comments().indexOf(comment));
  }

  private XSheetAnnotations annotations() {
    return queryInterface(XSheetAnnotationsSupplier.class, sheet).getAnnotations();
  }

  /** What a cell shows. */
  public String shown(int column, int row) throws Exception {
    return queryInterface(XText.class, cell(column, row)).getString();
  }

  /**
   * Whether a rectangle holds nothing, not even a comment. Asked for the part of the sheet that is
   * used: beyond it, Calc 7.4 answers for the last column that it has.
   */
  public boolean isEmpty(int left, int top, int right, int bottom) throws Exception {
    CellRangeAddress used = usedArea();
    if (left > used.EndColumn || top > used.EndRow) {
      return true;
    }
    XCellRange asked =
        range(left, top, Math.min(right, used.EndColumn), Math.min(bottom, used.EndRow));
    return queryInterface(XCellRangesQuery.class, asked)
            .queryContentCells((short) ANY_CONTENT)
            .getCount()
        == 0;
  }

  /** Whether one of its formulas, in English, holds a text. */
  public boolean hasFormulaWith(String text) throws Exception {
    XIndexAccess formulas =
        queryInterface(
            XIndexAccess.class,
            queryInterface(XCellRangesQuery.class, sheet)
                .queryContentCells((short) CellFlags.FORMULA));
    for (int i = 0; i < formulas.getCount(); i++) {
      String[][] rows =
          queryInterface(XCellRangeFormula.class, formulas.getByIndex(i)).getFormulaArray();
      if (Arrays.stream(rows).flatMap(Arrays::stream).anyMatch(formula -> formula.contains(text))) {
        return true;
      }
    }
    return false;
  }

  /** Moves what lies in and below a rectangle down, to make room. */
  public void makeRoom(int left, int top, int right, int bottom) throws Exception {
    CellRangeAddress place =
        queryInterface(XCellRangeAddressable.class, range(left, top, right, bottom))
            .getRangeAddress();
    queryInterface(XCellRangeMovement.class, sheet).insertCells(place, CellInsertMode.DOWN);
  }

  /** Makes one cell out of a rectangle. */
  public void merge(int left, int top, int right, int bottom) throws Exception {
    queryInterface(XMergeable.class, range(left, top, right, bottom)).merge(true);
  }

  /** Gives a column a width in hundredths of a millimetre, or leaves it if it is wide enough. */
  public void widen(int column, int width) throws Exception {
    XPropertySet properties = column(column);
    if ((Integer) properties.getPropertyValue("Width") < width) {
      properties.setPropertyValue("Width", width);
    }
  }

  /** Gives a column a width in hundredths of a millimetre. */
  public void width(int column, int width) throws Exception {
    column(column).setPropertyValue("Width", width);
  }

  private XPropertySet column(int column) throws Exception {
    return queryInterface(
        XPropertySet.class,
        queryInterface(XColumnRowRange.class, sheet).getColumns().getByIndex(column));
  }

  /** Whether a whole column holds nothing. */
  public boolean isEmptyColumn(int column) throws Exception {
    return isEmpty(column, 0, column, usedArea().EndRow);
  }

  /** The smallest rectangle that holds all that is on the sheet. */
  public CellRangeAddress usedArea() {
    XSheetCellCursor cursor = sheet.createCursor();
    XUsedAreaCursor used = queryInterface(XUsedAreaCursor.class, cursor);
    used.gotoStartOfUsedArea(false);
    used.gotoEndOfUsedArea(true);
    return queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress();
  }
}
