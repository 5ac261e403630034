package tenthmark.addin.table;

import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tenthmark.addin.document.SheetCells;

/**
 * A record table on a sheet: a row of headings, and below it three rows for each record. The first
 * row holds the record, the other two its rationale. Beside them stands what each contribution is
 * due to, which the rationale is made of.
 *
 * @param left number of its first column, from 0
 * @param top number of the row of its headings, from 0
 * @param records how many records it holds
 */
record RecordTable(SheetCells sheet, int left, int top, int records) {

  /** Rows that a record takes. */
  static final int RECORD_HEIGHT = 3;

  private static final List<Column> CONTRIBUTIONS =
      List.of(Column.READING, Column.PHYSICAL, Column.INSTRUMENT);

  private static final String RATIONALE =
      "=IF(COUNT({READING}:{INSTRUMENT})=0;\"\";LAB_RATIONALE({KIND}:{SIZE+2};{UNIT}&\"\"))";

  /** The number of its last column. */
  int right() {
    return left + Column.values().length - 1;
  }

  /** The number of its last row. */
  int bottom() {
    return top + RECORD_HEIGHT * records;
  }

  /**
   * The words that it is written in, if its headings are ours, so that a record of ours fits in.
   */
  Optional<TableWords> words() throws Exception {
    List<String> headings = new ArrayList<>();
    for (Column column : Column.values()) {
      headings.add(sheet.shown(place(column), top));
    }
    return TableWords.inEveryLanguage()
        .filter(
            words -> headings.equals(Arrays.stream(Column.values()).map(words::heading).toList()))
        .findFirst();
  }

  /** The same table with one more record at its end. */
  RecordTable longer() {
    return new RecordTable(sheet, left, top, records + 1);
  }

  /** The number of a column on the sheet. */
  @SuppressWarnings("EnumOrdinal") // The columns stand in the order in which they are declared.
  int place(Column column) {
    return left + column.ordinal();
  }

  /** Writes the headings. */
  void writeHeadings(TableWords words) throws Exception {
    for (Column column : Column.values()) {
      put(column, top, words.heading(column));
    }
    Look.heading(sheet.range(left, top, right(), top));
  }

  /** Writes the last record, with its formulas and nothing measured yet. */
  void writeLastRecord(TableWords words, TypedNumbers numbers) throws Exception {
    int row = bottom() - RECORD_HEIGHT + 1;
    look(row);
    for (Column column : Column.ofTypedNumbers()) {
      numbers.mark(sheet, place(column), row);
    }
    Formulas formulas = new Formulas(this, row);
    for (Column column : Column.values()) {
      if (column.content().isPresent()) {
        put(column, row, formulas.resolved(column.content().get()));
      }
    }
    for (int i = 0; i < CONTRIBUTIONS.size(); i++) {
      Column kind = CONTRIBUTIONS.get(i);
      put(Column.KIND, row + i, words.kind(kind));
      put(Column.SIZE, row + i, formulas.resolved("=SUM({" + kind + "})"));
    }
    put(Column.QUANTITY, row + 1, words.rationale());
    put(Column.SYMBOL, row + 1, formulas.resolved(RATIONALE));
  }

  private void put(Column column, int row, String content) throws Exception {
    sheet.cell(place(column), row).setFormula(content);
  }

  private void look(int row) throws Exception {
    int last = row + RECORD_HEIGHT - 1;
    Look.plain(sheet.range(left, row, right(), last));
    Look.boxed(sheet.range(left, row, right(), last));
    for (Column column : Column.values()) {
      if (column.isCalculated()) {
        Look.calculated(sheet.range(place(column), row, place(column), row));
      }
    }
    Look.calculated(sheet.range(place(Column.KIND), row, place(Column.KIND), last));
    Look.calculated(sheet.range(place(Column.SIZE), row, place(Column.SIZE), last));
    Look.result(sheet.range(place(Column.RESULT), row, place(Column.RESULT), row));
    sheet.merge(left, row + 1, left, last);
    sheet.merge(place(Column.SYMBOL), row + 1, place(Column.RESULT), last);
    Look.remark(sheet.range(left, row + 1, place(Column.RESULT), last));
  }
}
