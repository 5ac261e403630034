package tenthmark.addin.document;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XController;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.frame.XTitle;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.sheet.XViewPane;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import com.sun.star.view.XSelectionSupplier;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A spreadsheet in its window. */
public final class Spreadsheet {

  private final XController controller;
  private final XModel model;

  /** The one that a window shows. */
  public Spreadsheet(XController controller) {
    this.controller = controller;
    this.model = controller.getModel();
  }

  /** The document itself, for what this class does not offer. */
  public XModel model() {
    return model;
  }

  /** A change of the spreadsheet. */
  @FunctionalInterface
  public interface Change {

    /** Makes it. */
    void make() throws Exception;
  }

  /** Makes a change that one undo takes back; one that fails is taken back at once. */
  public void change(String title, Change change) throws Exception {
    XUndoManager undo = queryInterface(XUndoManagerSupplier.class, model).getUndoManager();
    int before = undo.getAllUndoActionTitles().length;
    boolean done = false;
    model.lockControllers();
    undo.enterUndoContext(title);
    try {
      change.make();
      done = true;
    } finally {
      undo.leaveUndoContext();
      if (!done && undo.getAllUndoActionTitles().length > before) {
        undo.undo();
      }
      model.unlockControllers();
    }
  }

  /** Whether it may not be changed at all. */
  public boolean isReadOnly() {
    return queryInterface(XStorable.class, model).isReadonly();
  }

  /** The selected cells, if it is cells in one rectangle that are selected. */
  public Optional<CellRangeAddress> selection() {
    Object selected = queryInterface(XSelectionSupplier.class, controller).getSelection();
    return Optional.ofNullable(queryInterface(XCellRangeAddressable.class, selected))
        .map(XCellRangeAddressable::getRangeAddress);
  }

  /**
   * Puts the cursor on a cell and brings it into sight. A cell that stayed marked would keep the
   * Tab key within it.
   */
  public void select(XCell cell) throws Exception {
    XSelectionSupplier selection = queryInterface(XSelectionSupplier.class, controller);
    selection.select(cell);
    selection.select(
        queryInterface(XMultiServiceFactory.class, model)
            .createInstance("com.sun.star.sheet.SheetCellRanges"));
  }

  /**
   * Scrolls so that the row of a selected cell stands in the upper part of what the window shows,
   * if it stands further down.
   *
   * @param part which part of the height is the upper one, from 0 to 1
   */
  public void bringUp(XCell cell, double part) throws Exception {
    XViewPane pane = queryInterface(XViewPane.class, controller);
    CellRangeAddress shown = pane.getVisibleRange();
    SheetCells sheet = sheet(shown.Sheet);
    int top = position(sheet.cell(0, shown.StartRow)).Y;
    int height = bottom(sheet.cell(0, shown.EndRow)) - top;
    if (bottom(cell) - top > part * height) {
      int row = queryInterface(XCellAddressable.class, cell).getCellAddress().Row;
      pane.setFirstVisibleRow(Math.max(0, row - 1));
    }
  }

  /** How far down on its sheet a cell ends. */
  private static int bottom(XCell cell) throws Exception {
    Size size = (Size) queryInterface(XPropertySet.class, cell).getPropertyValue("Size");
    return position(cell).Y + size.Height;
  }

  private static Point position(XCell cell) throws Exception {
    return (Point) queryInterface(XPropertySet.class, cell).getPropertyValue("Position");
  }

  /** The sheet with a number. */
  public SheetCells sheet(int number) throws Exception {
    Object sheets = queryInterface(XSpreadsheetDocument.class, model).getSheets();
    return new SheetCells(
        queryInterface(
            XSpreadsheet.class, queryInterface(XIndexAccess.class, sheets).getByIndex(number)));
  }

  /** The sheet with a name, if there is one. */
  public Optional<SheetCells> sheet(String name) throws Exception {
    XSpreadsheets sheets = queryInterface(XSpreadsheetDocument.class, model).getSheets();
    return sheets.hasByName(name)
        ? Optional.of(new SheetCells(queryInterface(XSpreadsheet.class, sheets.getByName(name))))
        : Optional.empty();
  }

  /** All sheets, from left to right. */
  public List<SheetCells> sheets() throws Exception {
    List<SheetCells> sheets = new ArrayList<>();
    String[] names =
        queryInterface(XSpreadsheetDocument.class, model).getSheets().getElementNames();
    for (int number = 0; number < names.length; number++) {
      sheets.add(sheet(number));
    }
    return sheets;
  }

  /** Its title, as the window shows it. */
  public String title() {
    return queryInterface(XTitle.class, model).getTitle();
  }

  /** The file that it was last saved in, if it lies on a disk. */
  public Optional<Path> file() {
    String url = model.getURL();
    return url.startsWith("file:") ? Optional.of(Path.of(URI.create(url))) : Optional.empty();
  }

  /** Writes it as it is now into another file, by one of the office's filters. */
  public void storeCopy(Path copy, String filter) throws Exception {
    PropertyValue format = new PropertyValue();
    format.Name = "FilterName";
    format.Value = filter;
    queryInterface(XStorable.class, model)
        .storeToURL(copy.toUri().toString(), new PropertyValue[] {format});
  }

  /** The names of ranges that hold in the whole document. */
  public XNamedRanges names() throws Exception {
    return queryInterface(
        XNamedRanges.class,
        queryInterface(XPropertySet.class, model).getPropertyValue("NamedRanges"));
  }
}
