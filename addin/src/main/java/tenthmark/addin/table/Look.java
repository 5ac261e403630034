package tenthmark.addin.table;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.FontSlant;
import com.sun.star.awt.FontWeight;
import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.table.BorderLine2;
import com.sun.star.table.CellHoriJustify;
import com.sun.star.table.CellVertJustify2;
import com.sun.star.table.TableBorder2;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;

/** How the cells of the record table look. */
final class Look {

  private static final int PALE_SLATE = 0xE3E8EE;
  private static final int FAINT_SLATE = 0xF3F5F8;
  private static final int SLATE = 0x8796A5;

  /** In hundredths of a millimetre. */
  private static final short THIN = 18;

  private Look() {}

  /** Takes away the look that new cells have from those above them. */
  static void plain(XCellRange cells) {
    queryInterface(XSheetOperation.class, cells).clearContents(CellFlags.HARDATTR);
  }

  static void heading(XCellRange cells) throws Exception {
    boxed(cells);
    set(cells, "CellBackColor", PALE_SLATE);
    set(cells, "CharWeight", FontWeight.BOLD);
    set(cells, "HoriJustify", CellHoriJustify.CENTER);
  }

  static void boxed(XCellRange cells) throws Exception {
    BorderLine2 line = new BorderLine2();
    line.Color = SLATE;
    line.LineWidth = THIN;
    TableBorder2 border = new TableBorder2();
    border.TopLine = line;
    border.BottomLine = line;
    border.LeftLine = line;
    border.RightLine = line;
    border.HorizontalLine = line;
    border.VerticalLine = line;
    border.IsTopLineValid = true;
    border.IsBottomLineValid = true;
    border.IsLeftLineValid = true;
    border.IsRightLineValid = true;
    border.IsHorizontalLineValid = true;
    border.IsVerticalLineValid = true;
    set(cells, "TableBorder2", border);
    set(cells, "IsTextWrapped", true);
    set(cells, "VertJustify", CellVertJustify2.CENTER);
  }

  static void calculated(XCellRange cells) throws Exception {
    set(cells, "CellBackColor", FAINT_SLATE);
  }

  static void result(XCellRange cells) throws Exception {
    set(cells, "CharWeight", FontWeight.BOLD);
  }

  static void remark(XCellRange cells) throws Exception {
    calculated(cells);
    set(cells, "CharPosture", FontSlant.ITALIC);
    set(cells, "VertJustify", CellVertJustify2.TOP);
  }

  private static void set(XCellRange cells, String property, Object value) throws Exception {
    queryInterface(XPropertySet.class, cells).setPropertyValue(property, value);
  }
}
