package tenthmark.addin.office;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSheetAnnotations;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XViewPane;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XSimpleText;
import com.sun.star.text.XText;
import com.sun.star.util.CloseVetoException;
import com.sun.star.util.URL;
import com.sun.star.util.XCloseable;
import com.sun.star.view.XSelectionSupplier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.formula.CellAddress;

/**
 * A spreadsheet that is open in a real Calc. Addresses are on its first sheet unless they name
 * another, as in {@code Data.B2}.
 */
public final class Workbook implements AutoCloseable {

  /** A file format that Calc saves. */
  public enum Format {
    ODS("calc8", ".ods"),
    XLSX("Calc MS Excel 2007 XML", ".xlsx");

    private final String filter;
    private final String ending;

    Format(String filter, String ending) {
      this.filter = filter;
      this.ending = ending;
    }
  }

  private final Office office;
  private final XSpreadsheetDocument document;

  Workbook(Office office, XSpreadsheetDocument document) {
    this.office = office;
    this.document = document;
  }

  /** The document itself, for what this class does not offer. */
  public XSpreadsheetDocument document() {
    return document;
  }

  /** Writes a formula in English with semicolons, a number as {@code 1.5}, or a text. */
  public Workbook set(String address, String content) throws Exception {
    cell(address).setFormula(content);
    return this;
  }

  /** Writes a number. */
  public Workbook set(String address, double number) throws Exception {
    cell(address).setValue(number);
    return this;
  }

  /** Writes a formula as a user types it in the office's language. */
  public Workbook type(String address, String formula) throws Exception {
    queryInterface(XPropertySet.class, cell(address)).setPropertyValue("FormulaLocal", formula);
    return this;
  }

  /** Writes formulas, numbers or texts into all cells of a range at once, by rows. */
  public Workbook setAll(String range, String[][] contents) throws Exception {
    queryInterface(XCellRangeFormula.class, range(range)).setFormulaArray(contents);
    return this;
  }

  /** Writes a matrix formula over a range. */
  public Workbook setMatrix(String range, String formula) throws Exception {
    queryInterface(XArrayFormulaRange.class, range(range)).setArrayFormula(formula);
    return this;
  }

  /** The number that a cell holds. */
  public double number(String address) throws Exception {
    return cell(address).getValue();
  }

  /** Whether a cell's formula gives a text. */
  public boolean isText(String address) throws Exception {
    return Integer.valueOf(FormulaResult.STRING)
        .equals(
            queryInterface(XPropertySet.class, cell(address))
                .getPropertyValue("FormulaResultType2"));
  }

  /** What a cell shows. */
  public String shown(String address) throws Exception {
    return queryInterface(XText.class, cell(address)).getString();
  }

  /** A cell's error code as Calc counts them, 0 for none. */
  public int error(String address) throws Exception {
    return cell(address).getError();
  }

  /** A cell's formula in English. */
  public String formula(String address) throws Exception {
    return cell(address).getFormula();
  }

  /** A cell's formula as the office's language shows it. */
  public String localFormula(String address) throws Exception {
    return (String)
        queryInterface(XPropertySet.class, cell(address)).getPropertyValue("FormulaLocal");
  }

  /** The values of a range by rows: numbers and texts. */
  public Object[][] values(String range) throws Exception {
    return queryInterface(XCellRangeData.class, range(range)).getDataArray();
  }

  /** What was typed into the cells of a range, by rows: formulas in English. */
  public String[][] formulas(String range) throws Exception {
    return queryInterface(XCellRangeFormula.class, range(range)).getFormulaArray();
  }

  /** Computes all formulas anew, whether or not something changed. */
  public Workbook recalculateHard() {
    queryInterface(XCalculatable.class, document).calculateAll();
    return this;
  }

  /** Saves a copy; the open document stays what it is. */
  public Path save(String name, Format format) throws Exception {
    return save(name + format.ending, format.filter);
  }

  /** Saves a copy under a whole file name, by the office's filter of that name. */
  public Path save(String fileName, String filterName) throws Exception {
    Path file = office.folder().resolve(fileName);
    queryInterface(XStorable.class, document)
        .storeToURL(file.toUri().toString(), properties("FilterName", filterName));
    return file;
  }

  private static PropertyValue[] properties(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return new PropertyValue[] {property};
  }

  /** Saves it as a user does: from then on it is the document of that file. */
  public Path saveAs(String name, Format format) throws Exception {
    Path file = office.folder().resolve(name + format.ending);
    queryInterface(XStorable.class, document)
        .storeAsURL(file.toUri().toString(), properties("FilterName", format.filter));
    return file;
  }

  /** Saves it again. */
  public Workbook saveAgain() throws Exception {
    queryInterface(XStorable.class, document).store();
    return this;
  }

  /** Runs a command of the office or of an extension in the window of the spreadsheet. */
  public DispatchResultEvent dispatch(String command) throws Exception {
    XDispatchHelper helper =
        queryInterface(XDispatchHelper.class, office.service("com.sun.star.frame.DispatchHelper"));
    XDispatchProvider window = queryInterface(XDispatchProvider.class, frame());
    return (DispatchResultEvent)
        helper.executeDispatch(window, command, "_self", 0, new PropertyValue[0]);
  }

  /** Chooses a command as a user does, who is spoken to in windows; it may go on afterwards. */
  public Workbook choose(String command) throws Exception {
    URL address = office.address(command);
    queryInterface(XDispatchProvider.class, frame())
        .queryDispatch(address, "_self", 0)
        .dispatch(address, new PropertyValue[0]);
    return this;
  }

  /** Selects cells. */
  public Workbook select(String address) throws Exception {
    queryInterface(XSelectionSupplier.class, frame().getController()).select(range(address));
    return this;
  }

  /** The first of the selected cells, such as {@code B4}. */
  public String cursor() {
    Object selected =
        queryInterface(XSelectionSupplier.class, frame().getController()).getSelection();
    CellRangeAddress place =
        queryInterface(XCellRangeAddressable.class, selected).getRangeAddress();
    return new CellAddress("", place.StartColumn, place.StartRow).place();
  }

  /** The first row in sight, from 1. */
  public int firstRowInSight() {
    return queryInterface(XViewPane.class, frame().getController()).getFirstVisibleRow() + 1;
  }

  /** The steps that can be undone. */
  public XUndoManager undo() {
    return queryInterface(XUndoManagerSupplier.class, document).getUndoManager();
  }

  /** The window of the spreadsheet. */
  public XFrame frame() {
    return queryInterface(XModel.class, document).getCurrentController().getFrame();
  }

  /** Adds a sheet at the end. */
  public Workbook addSheet(String name) {
    document.getSheets().insertNewByName(name, Short.MAX_VALUE);
    return this;
  }

  /** The cells of an address. */
  public XCellRange range(String address) throws Exception {
    int dot = address.lastIndexOf('.');
    Object sheet =
        dot < 0
            ? queryInterface(XIndexAccess.class, document.getSheets()).getByIndex(0)
            : document.getSheets().getByName(address.substring(0, dot));
    return queryInterface(XCellRange.class, sheet).getCellRangeByName(address.substring(dot + 1));
  }

  private XCell cell(String address) throws Exception {
    return range(address).getCellByPosition(0, 0);
  }

  @Override
  public void close() throws CloseVetoException {
    queryInterface(XCloseable.class, document).close(true);
  }

  /** The comments on the cells of a sheet. */
  public XSheetAnnotations annotations(String sheet) throws Exception {
    XSheetCellRange cell = queryInterface(XSheetCellRange.class, range(sheet + ".A1"));
    return queryInterface(XSheetAnnotationsSupplier.class, cell.getSpreadsheet()).getAnnotations();
  }

  /** What they say. */
  public List<String> comments(String sheet) throws Exception {
    XSheetAnnotations annotations = annotations(sheet);
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < annotations.getCount(); i++) {
      texts.add(queryInterface(XSimpleText.class, annotations.getByIndex(i)).getString());
    }
    return texts;
  }
}
