package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.UnknownPropertyException;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.NoSuchElementException;
import com.sun.star.container.XNameAccess;
import com.sun.star.container.XNamed;
import com.sun.star.lang.IndexOutOfBoundsException;
import com.sun.star.lang.WrappedTargetException;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import java.util.Optional;
import java.util.OptionalDouble;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;

/** The cells of a document that is open in Calc, read anew at each call. */
final class OfficeCells implements Cells {

  private final XNameAccess sheets;
  private final XPropertySet document;

  private OfficeCells(XPropertySet document) {
    this.document = document;
    this.sheets =
        queryInterface(
            XNameAccess.class, queryInterface(XSpreadsheetDocument.class, document).getSheets());
  }

  /** The cells of a range together with its document. */
  static CellBlock block(XPropertySet document, XCellRange range) {
    OfficeCells cells = new OfficeCells(document);
    return new CellBlock(cells.rangeOf(range), cells);
  }

  private CellRange rangeOf(XCellRange range) {
    XSpreadsheet sheet = queryInterface(XSheetCellRange.class, range).getSpreadsheet();
    CellRangeAddress address = queryInterface(XCellRangeAddressable.class, range).getRangeAddress();
    return new CellRange(
        queryInterface(XNamed.class, sheet).getName(),
        address.StartColumn,
        address.StartRow,
        address.EndColumn,
        address.EndRow);
  }

  @Override
  public CellContent at(CellAddress address) {
    return cell(address).map(OfficeCells::content).orElseGet(CellContent.Empty::new);
  }

  @Override
  public OptionalDouble shown(CellAddress address) {
    return cell(address)
        .filter(cell -> cell.getError() == 0 && isNumber(cell))
        .map(cell -> OptionalDouble.of(cell.getValue()))
        .orElseGet(OptionalDouble::empty);
  }

  private static boolean isNumber(XCell cell) {
    try {
      return Integer.valueOf(FormulaResult.VALUE)
          .equals(queryInterface(XPropertySet.class, cell).getPropertyValue("FormulaResultType2"));
    } catch (UnknownPropertyException | WrappedTargetException failure) {
      throw new IllegalStateException(failure);
    }
  }

  private Optional<XCell> cell(CellAddress address) {
    try {
      XSpreadsheet sheet = queryInterface(XSpreadsheet.class, sheets.getByName(address.sheet()));
      return Optional.of(sheet.getCellByPosition(address.column(), address.row()));
    } catch (NoSuchElementException | IndexOutOfBoundsException outside) {
      return Optional.empty();
    } catch (WrappedTargetException failure) {
      throw new IllegalStateException(failure);
    }
  }

  private static CellContent content(XCell cell) {
    switch (cell.getType().getValue()) {
      case com.sun.star.table.CellContentType.VALUE_value:
        return new CellContent.Number(cell.getValue());
      case com.sun.star.table.CellContentType.TEXT_value:
        return new CellContent.Text(queryInterface(XText.class, cell).getString());
      case com.sun.star.table.CellContentType.FORMULA_value:
        return new CellContent.Formula(cell.getFormula());
      default:
        return new CellContent.Empty();
    }
  }

  @Override
  public Optional<CellRange> named(String name, String sheet) {
    try {
      XPropertySet properties = queryInterface(XPropertySet.class, sheets.getByName(sheet));
      return named(name, properties).or(() -> named(name, document));
    } catch (NoSuchElementException outside) {
      return Optional.empty();
    } catch (WrappedTargetException failure) {
      throw new IllegalStateException(failure);
    }
  }

  private Optional<CellRange> named(String name, XPropertySet owner) {
    try {
      XNameAccess names = queryInterface(XNameAccess.class, owner.getPropertyValue("NamedRanges"));
      if (!names.hasByName(name)) {
        return Optional.empty();
      }
      XCellRange range =
          queryInterface(XCellRangeReferrer.class, names.getByName(name)).getReferredCells();
      return Optional.ofNullable(range).map(this::rangeOf);
    } catch (NoSuchElementException removed) {
      return Optional.empty();
    } catch (UnknownPropertyException | WrappedTargetException failure) {
      throw new IllegalStateException(failure);
    }
  }
}
