package tenthmark.checker.copy;

import java.lang.reflect.Field;
import java.util.Collections;
import java.util.List;
import org.apache.poi.hssf.model.InternalWorkbook;
import org.apache.poi.hssf.record.ExternSheetRecord;
import org.apache.poi.hssf.record.NameRecord;
import org.apache.poi.hssf.record.Record;
import org.apache.poi.hssf.record.SupBookRecord;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;

/**
 * The order of the sheets of an .xls workbook. Formulas, those of charts too, name a sheet by a
 * line of a table that the workbook has for all of them (MS-XLS, 2.4.105), so they stay as they are
 * and the table follows. POI 5.5.1 has no way to it: its setSheetOrder takes the number of the line
 * for that of the sheet and changes the formulas of cells, but not those of charts.
 */
final class XlsSheets {

  private final InternalWorkbook workbook;
  private final List<?> sheets;
  private final int last;

  private XlsSheets(HSSFWorkbook workbook) {
    this.workbook = workbook.getInternalWorkbook();
    this.sheets = sheets(workbook);
    this.last = sheets.size() - 1;
    if (this.workbook.getNumSheets() != sheets.size()) {
      throw new IllegalStateException("it has a sheet that is neither of cells nor a chart");
    }
  }

  /** The list is protected and the class final. */
  private static List<?> sheets(HSSFWorkbook workbook) {
    try {
      Field sheets = HSSFWorkbook.class.getDeclaredField("_sheets");
      sheets.setAccessible(true);
      return (List<?>) sheets.get(workbook);
    } catch (ReflectiveOperationException otherVersion) {
      throw new IllegalStateException(otherVersion);
    }
  }

  /**
   * Puts the last sheet in front of the others. Then the workbook can only be written: POI goes on
   * reading formulas by the old table.
   */
  static void putLastInFront(HSSFWorkbook workbook) {
    new XlsSheets(workbook).putLastInFront();
  }

  private void putLastInFront() {
    Collections.rotate(sheets, 1);
    workbook.setSheetOrder(workbook.getSheetName(last), 0);
    List<Record> records = workbook.getRecords();
    List<Record> books = records.stream().filter(SupBookRecord.class::isInstance).toList();
    records.replaceAll(
        record -> record instanceof ExternSheetRecord table ? following(table, books) : record);
    for (Record record : records) {
      if (record instanceof NameRecord name) {
        // Counted from 1; a name of the whole workbook has 0.
        name.setSheetNumber(place(name.getSheetNumber() - 1) + 1);
      }
    }
    workbook
        .getWindowOne()
        .setActiveSheetIndex(place(workbook.getWindowOne().getActiveSheetIndex()));
  }

  /** The table with the sheets of this workbook where they now are; those of others stay. */
  private ExternSheetRecord following(ExternSheetRecord table, List<Record> books) {
    ExternSheetRecord following = new ExternSheetRecord();
    for (int line = 0; line < table.getNumOfRefs(); line++) {
      int book = table.getExtbookIndexFromRefIndex(line);
      int from = table.getFirstSheetIndexFromRefIndex(line);
      int to = table.getLastSheetIndexFromRefIndex(line);
      boolean own = ((SupBookRecord) books.get(book)).isInternalReferences();
      following.addRef(book, own ? place(from) : from, own ? place(to) : to);
    }
    return following;
  }

  /** A negative number stands for a sheet that was deleted, or for no single one. */
  private int place(int sheet) {
    return sheet < 0 || sheet > last ? sheet : sheet == last ? 0 : sheet + 1;
  }
}
