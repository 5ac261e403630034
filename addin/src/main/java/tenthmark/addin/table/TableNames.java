package tenthmark.addin.table;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tenthmark.addin.document.Spreadsheet;

/**
 * The names that a table's ranges carry: {@code records} for the whole table, by which the checker
 * finds its end, and {@code values} and {@code uncertainties} for formulas. Those of a second table
 * end in {@code _2}, and so on.
 */
final class TableNames {

  private static final String TABLE = "records";
  private static final String VALUES = "values";
  private static final String UNCERTAINTIES = "uncertainties";

  private final Spreadsheet document;
  private final XNamedRanges names;

  TableNames(Spreadsheet document) throws Exception {
    this.document = document;
    this.names = document.names();
  }

  /** A table and what its names end in. */
  record Named(RecordTable table, String ending) {}

  /** The tables on a sheet that carry a name of ours, whatever they look like. */
  List<Named> on(int sheet) throws Exception {
    List<Named> tables = new ArrayList<>();
    for (String name : names.getElementNames()) {
      if (name.toLowerCase(Locale.ROOT).startsWith(TABLE)) {
        Optional<CellRangeAddress> place = place(name).filter(found -> found.Sheet == sheet);
        if (place.isPresent()) {
          tables.add(new Named(table(place.get()), name.substring(TABLE.length())));
        }
      }
    }
    return tables;
  }

  private RecordTable table(CellRangeAddress place) throws Exception {
    return new RecordTable(
        document.sheet(place.Sheet),
        place.StartColumn,
        place.StartRow,
        (place.EndRow - place.StartRow) / RecordTable.RECORD_HEIGHT);
  }

  private Optional<CellRangeAddress> place(String name) throws Exception {
    XCellRange cells =
        queryInterface(XCellRangeReferrer.class, names.getByName(name)).getReferredCells();
    return Optional.ofNullable(cells)
        .map(found -> queryInterface(XCellRangeAddressable.class, found).getRangeAddress());
  }

  /** Names the ranges of a new table. */
  void add(RecordTable table) throws Exception {
    set(table, unusedEnding());
  }

  /** Gives the names of a table the ranges that it has now. */
  void set(RecordTable table, String ending) throws Exception {
    int row = table.top() + 1;
    int value = table.place(Column.VALUE);
    int uncertainty = table.place(Column.UNCERTAINTY);
    set(
        TABLE + ending,
        table.sheet().range(table.left(), table.top(), table.right(), table.bottom()));
    set(VALUES + ending, table.sheet().range(value, row, value, table.bottom()));
    set(UNCERTAINTIES + ending, table.sheet().range(uncertainty, row, uncertainty, table.bottom()));
  }

  private void set(String name, XCellRange cells) throws Exception {
    String content =
        (String) queryInterface(XPropertySet.class, cells).getPropertyValue("AbsoluteName");
    if (names.hasByName(name)) {
      queryInterface(XNamedRange.class, names.getByName(name)).setContent(content);
    } else {
      names.addNewByName(name, content, new CellAddress(), 0);
    }
  }

  private String unusedEnding() {
    String ending = "";
    for (int number = 2; isUsed(ending); number++) {
      ending = "_" + number;
    }
    return ending;
  }

  private boolean isUsed(String ending) {
    return names.hasByName(TABLE + ending)
        || names.hasByName(VALUES + ending)
        || names.hasByName(UNCERTAINTIES + ending);
  }
}
