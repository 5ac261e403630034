package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.UnknownPropertyException;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.NoSuchElementException;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.IndexOutOfBoundsException;
import com.sun.star.lang.WrappedTargetException;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Effort;
import tenthmark.measurement.formula.NamedFormula;
import tenthmark.measurement.formula.OfficeNotation;
import tenthmark.measurement.formula.SheetSize;

/**
 * The cells of a document that is open in Calc, as one call of a function sees them. Each call
 * makes its own, so that nothing outlives the recalculation.
 */
public final class OfficeCells implements Cells {

  /** From so many rows or columns on, a range is cut to the part of the sheet that is used. */
  private static final int LARGE = 1_000;

  private final OpenDocument document;
  private final Map<CellRange, XCellRange> given = new HashMap<>();
  private final Map<String, Optional<XSpreadsheet>> byName = new HashMap<>();
  private String[] names;

  OfficeCells(OpenDocument document) {
    this.document = document;
  }

  /** The cells of a document that is open in Calc. */
  public static OfficeCells of(Object document) {
    return new OfficeCells(OpenDocument.of(queryInterface(XPropertySet.class, document)));
  }

  /** A formula in the language of the office, as the user sees it. */
  public String localFormula(CellAddress address) {
    return cell(address).map(OfficeCells::localFormula).orElse("");
  }

  private static String localFormula(XCell cell) {
    try {
      return (String) queryInterface(XPropertySet.class, cell).getPropertyValue("FormulaLocal");
    } catch (UnknownPropertyException | WrappedTargetException failure) {
      throw new IllegalStateException(failure);
    }
  }

  /** The first cell of a range. */
  public CellAddress first(CellRangeAddress range) {
    return new CellAddress(sheetNames()[range.Sheet], range.StartColumn, range.StartRow);
  }

  /** A range that the function was given. */
  CellBlock block(XCellRange range) {
    CellRange place = placeOf(range);
    given.put(place, range);
    return new CellBlock(place, this);
  }

  /** The cells themselves, if there is such a sheet. */
  Optional<XCellRange> range(CellRange place) {
    return sheet(place.sheet()).map(sheet -> at(place, sheet));
  }

  private CellRange placeOf(XCellRange range) {
    CellRangeAddress address = queryInterface(XCellRangeAddressable.class, range).getRangeAddress();
    return new CellRange(
        sheetNames()[address.Sheet],
        address.StartColumn,
        address.StartRow,
        address.EndColumn,
        address.EndRow);
  }

  /** The names in the sheets' order. */
  private String[] sheetNames() {
    if (names == null) {
      names = document.sheets().getElementNames();
    }
    return names;
  }

  @Override
  public Effort effort() {
    return document.effort();
  }

  @Override
  public boolean hasSheet(String name) {
    return sheet(name).isPresent();
  }

  @Override
  public CellContent at(CellAddress address) {
    CellRange alone = CellRange.of(address);
    return given.containsKey(alone)
        ? contents(alone, given.get(alone)).get(0).get(0)
        : content(address);
  }

  private CellContent content(CellAddress address) {
    return cell(address).map(cell -> content(cell, address)).orElseGet(CellContent.Empty::new);
  }

  @Override
  public List<List<CellContent>> rows(CellRange range) {
    if (given.containsKey(range) && !isLarge(range)) {
      return contents(range, given.get(range));
    }
    return sheet(range.sheet())
        .map(sheet -> rows(isLarge(range) ? used(range, sheet) : range, sheet))
        .orElseGet(() -> Cells.super.rows(range));
  }

  private List<List<CellContent>> rows(CellRange range, XSpreadsheet sheet) {
    return range.bottom() < range.top() || range.right() < range.left()
        ? List.of()
        : contents(range, at(range, sheet));
  }

  private List<List<CellContent>> contents(CellRange range, XCellRange cells) {
    String[][] formulas = queryInterface(XCellRangeFormula.class, cells).getFormulaArray();
    Object[][] values = queryInterface(XCellRangeData.class, cells).getDataArray();
    List<List<CellContent>> rows = new ArrayList<>(formulas.length);
    for (int row = 0; row < formulas.length; row++) {
      List<CellContent> contents = new ArrayList<>(formulas[row].length);
      for (int column = 0; column < formulas[row].length; column++) {
        CellAddress place =
            new CellAddress(range.sheet(), range.left() + column, range.top() + row);
        contents.add(
            content(formulas[row][column], values[row][column]).orElseGet(() -> content(place)));
      }
      rows.add(contents);
    }
    return rows;
  }

  /**
   * What a cell holds, unless only the cell itself can tell: whether it is a text that reads like
   * its own formula, and which cells its array formula fills.
   */
  private static Optional<CellContent> content(String formula, Object value) {
    if (formula.startsWith("=") || formula.startsWith("{=")) {
      return formula.equals(value) || formula.startsWith("{")
          ? Optional.empty()
          : Optional.of(new CellContent.Formula(formula));
    }
    if (value instanceof Double number) {
      return Optional.of(new CellContent.Number(number));
    }
    return Optional.of(text((String) value));
  }

  private static boolean isLarge(CellRange range) {
    return range.bottom() - range.top() >= LARGE || range.right() - range.left() >= LARGE;
  }

  private static CellRange used(CellRange range, XSpreadsheet sheet) {
    XSheetCellCursor cursor = sheet.createCursor();
    queryInterface(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
    CellRangeAddress end = queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress();
    return new CellRange(
        range.sheet(),
        range.left(),
        range.top(),
        Math.min(range.right(), end.EndColumn),
        Math.min(range.bottom(), end.EndRow));
  }

  private static XCellRange at(CellRange range, XSpreadsheet sheet) {
    try {
      return sheet.getCellRangeByPosition(range.left(), range.top(), range.right(), range.bottom());
    } catch (IndexOutOfBoundsException outside) {
      throw new IllegalArgumentException(range + " is outside the sheet", outside);
    }
  }

  @Override
  public Optional<CellContent> shown(CellAddress address) {
    return cell(address).map(OfficeCells::shown);
  }

  private static CellContent shown(XCell cell) {
    int error = cell.getError();
    if (error != 0) {
      return new CellContent.Fault(errorName(error));
    }
    if (isNumber(cell)) {
      return new CellContent.Number(cell.getValue());
    }
    return text(queryInterface(XText.class, cell).getString());
  }

  /** An error as Calc shows it in English; while it recalculates, it shows three dots only. */
  private static String errorName(int code) {
    return switch (code) {
      case 503 -> "#NUM!";
      case 519 -> "#VALUE!";
      case 524 -> "#REF!";
      case 525 -> "#NAME?";
      case 532 -> "#DIV/0!";
      case 32_767 -> "#N/A";
      default -> "Err:" + code;
    };
  }

  private static CellContent text(String text) {
    return text.isEmpty() ? new CellContent.Empty() : new CellContent.Text(text);
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
    return sheet(address.sheet()).flatMap(sheet -> cell(address, sheet));
  }

  private static Optional<XCell> cell(CellAddress address, XSpreadsheet sheet) {
    try {
      return Optional.of(sheet.getCellByPosition(address.column(), address.row()));
    } catch (IndexOutOfBoundsException outside) {
      return Optional.empty();
    }
  }

  private Optional<XSpreadsheet> sheet(String name) {
    return byName.computeIfAbsent(name, this::findSheet);
  }

  private Optional<XSpreadsheet> findSheet(String name) {
    try {
      return Optional.of(queryInterface(XSpreadsheet.class, document.sheets().getByName(name)));
    } catch (NoSuchElementException unknown) {
      return Optional.empty();
    } catch (WrappedTargetException failure) {
      throw new IllegalStateException(failure);
    }
  }

  private CellContent content(XCell cell, CellAddress address) {
    return switch (cell.getType().getValue()) {
      case com.sun.star.table.CellContentType.VALUE_value ->
          new CellContent.Number(cell.getValue());
      case com.sun.star.table.CellContentType.TEXT_value ->
          new CellContent.Text(queryInterface(XText.class, cell).getString());
      case com.sun.star.table.CellContentType.FORMULA_value -> {
        compute(cell);
        yield formula(cell.getFormula(), address);
      }
      default -> new CellContent.Empty();
    };
  }

  private CellContent formula(String text, CellAddress address) {
    return new CellContent.Formula(
        OfficeNotation.asInFiles(text),
        sheet(address.sheet())
            .filter(sheet -> text.startsWith("{"))
            .map(sheet -> array(sheet, address)));
  }

  /** The cells that the array formula of a cell fills. */
  private static CellRange array(XSpreadsheet sheet, CellAddress address) {
    XSheetCellCursor cursor =
        sheet.createCursorByRange(
            queryInterface(XSheetCellRange.class, at(CellRange.of(address), sheet)));
    cursor.collapseToCurrentArray();
    CellRangeAddress filled = queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress();
    return new CellRange(
        address.sheet(), filled.StartColumn, filled.StartRow, filled.EndColumn, filled.EndRow);
  }

  /**
   * Makes Calc compute a cell whose value nobody may have asked for. A cell that still waits to be
   * computed does not pass on that something before it has changed, and the function that follows
   * its formula would keep its old result.
   */
  private static void compute(XCell cell) {
    cell.getError();
  }

  @Override
  public Optional<NamedFormula> named(String name, String sheet) {
    return sheet(sheet)
        .flatMap(owner -> named(name, queryInterface(XPropertySet.class, owner)))
        .or(() -> named(name, document.properties()));
  }

  private Optional<NamedFormula> named(String name, XPropertySet owner) {
    try {
      XNameAccess names = queryInterface(XNameAccess.class, owner.getPropertyValue("NamedRanges"));
      if (!names.hasByName(name)) {
        return Optional.empty();
      }
      XNamedRange named = queryInterface(XNamedRange.class, names.getByName(name));
      com.sun.star.table.CellAddress base = named.getReferencePosition();
      return Optional.of(
          new NamedFormula(
              OfficeNotation.asInFiles(named.getContent()),
              new CellAddress(sheetNames()[base.Sheet], base.Column, base.Row),
              SheetSize.LARGE));
    } catch (NoSuchElementException removed) {
      return Optional.empty();
    } catch (UnknownPropertyException | WrappedTargetException failure) {
      throw new IllegalStateException(failure);
    }
  }
}
