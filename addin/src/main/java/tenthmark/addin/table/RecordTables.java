package tenthmark.addin.table;

import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.Exception;
import java.util.List;
import java.util.Optional;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;
import tenthmark.addin.notice.Notice;
import tenthmark.addin.table.TableNames.Named;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Language;

/** Begins record tables in a spreadsheet and adds records to them. */
public final class RecordTables {

  private final Workplace workplace;
  private final Spreadsheet document;

  /** Those of the spreadsheet at a workplace. */
  public RecordTables(Workplace workplace) {
    this.workplace = workplace;
    this.document = workplace.spreadsheet();
  }

  /**
   * Begins a table in the office's language with one record at the selected cell, as one step. The
   * first table of a workbook brings the notice along, below it.
   */
  public void begin() throws Exception {
    Language language = workplace.locale().language();
    Notice notice = new Notice(document);
    TableWords words = new TableWords(language);
    CellRangeAddress cursor = cursor();
    SheetCells sheet = changeable(cursor.Sheet);
    RecordTable table = new RecordTable(sheet, cursor.StartColumn, cursor.StartRow, 1);
    if (!sheet.reaches(table.right(), table.bottom())) {
      throw new RefusalException("table.no-room");
    }
    if (!sheet.isEmpty(table.left(), table.top(), table.right(), table.bottom())) {
      throw new RefusalException("table.not-empty", places(table));
    }
    document.change(
        workplace.title(),
        () -> {
          setWidths(table);
          table.writeHeadings(words);
          table.writeLastRecord(words, new TypedNumbers(document, words));
          new TableNames(document).add(table);
          if (!notice.isThere()) {
            notice.addBelow(sheet, table.left(), table.right(), table.bottom(), language);
          }
        });
    selectLastRecord(table);
  }

  /** Adds a record to the table at the selected cell, as one step. */
  public void addRecord() throws Exception {
    CellRangeAddress cursor = cursor();
    SheetCells sheet = changeable(cursor.Sheet);
    TableNames names = new TableNames(document);
    Named found =
        at(cursor, names.on(cursor.Sheet)).orElseThrow(() -> new RefusalException("record.none"));
    TableWords words =
        found.table().words().orElseThrow(() -> new RefusalException("record.other-table"));
    RecordTable longer = found.table().longer();
    if (!sheet.reaches(longer.right(), longer.bottom())) {
      throw new RefusalException("table.no-room");
    }
    document.change(
        workplace.title(),
        () -> {
          makeRoom(longer);
          longer.writeLastRecord(words, new TypedNumbers(document, words));
          names.set(longer, found.ending());
        });
    selectLastRecord(longer);
  }

  private CellRangeAddress cursor() {
    return document.selection().orElseThrow(() -> new RefusalException("cells.none"));
  }

  private SheetCells changeable(int number) throws Exception {
    SheetCells sheet = document.sheet(number);
    workplace.refuseUnchangeable(sheet);
    return sheet;
  }

  /** The table that the cursor is in or below, else the only one. */
  private static Optional<Named> at(CellRangeAddress cursor, List<Named> tables) {
    return tables.stream()
        .filter(named -> isAt(cursor, named.table()))
        .findFirst()
        .or(() -> tables.size() == 1 ? Optional.of(tables.get(0)) : Optional.empty());
  }

  private static boolean isAt(CellRangeAddress cursor, RecordTable table) {
    return cursor.StartColumn >= table.left()
        && cursor.StartColumn <= table.right()
        && cursor.StartRow >= table.top()
        && cursor.StartRow <= table.bottom() + 1;
  }

  private static void makeRoom(RecordTable longer) throws Exception {
    SheetCells sheet = longer.sheet();
    int first = longer.bottom() - RecordTable.RECORD_HEIGHT + 1;
    if (!sheet.isEmpty(longer.left(), first, longer.right(), longer.bottom())) {
      sheet.makeRoom(longer.left(), first, longer.right(), longer.bottom());
      if (!sheet.isEmpty(longer.left(), first, longer.right(), longer.bottom())) {
        throw new RefusalException("record.no-room");
      }
    }
  }

  /** Columns that hold something else are never made narrower. */
  private static void setWidths(RecordTable table) throws Exception {
    for (Column column : Column.values()) {
      int place = table.place(column);
      if (table.sheet().isEmptyColumn(place)) {
        table.sheet().width(place, column.width());
      } else {
        table.sheet().widen(place, column.width());
      }
    }
  }

  private void selectLastRecord(RecordTable table) throws Exception {
    document.select(
        table.sheet().cell(table.left(), table.bottom() - RecordTable.RECORD_HEIGHT + 1));
  }

  private static String places(RecordTable table) {
    return new CellAddress("", table.left(), table.top()).place()
        + ":"
        + new CellAddress("", table.right(), table.bottom()).place();
  }
}
