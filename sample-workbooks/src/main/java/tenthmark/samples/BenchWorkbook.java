package tenthmark.samples;

import java.util.List;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.samples.book.SampleBook;
import tenthmark.samples.book.SheetWriter;
import tenthmark.samples.book.Styles;

/** Builds the first lab table: records with their rationale, and what is calculated from them. */
final class BenchWorkbook {

  static final String RECORDS = "Records";

  private static final int FIRST_ROW = 5;
  private static final List<String> HEADINGS =
      List.of(
          "Quantity",
          "Symbol",
          "Value",
          "Unit",
          "Division",
          "Spacing",
          "Ends",
          "Reading",
          "Physical",
          "Instrument",
          "Timing",
          "Repeat",
          "Uncertainty",
          "Result");
  private static final double[] SPIN_TIMES = {41.2, 40.6, 41.9, 41.1, 40.8, 41.5};

  private final SampleBook book = new SampleBook();
  private final Styles styles = book.styles();
  private final SheetWriter records =
      book.sheet(RECORDS, 32, 9, 10, 7, 9, 9, 7, 10, 10, 11, 9, 9, 12, 19);
  private final SheetWriter contributions = book.sheet("Contributions", 34, 13, 52, 14);
  private final SheetWriter repeats = book.sheet("Repeats", 12, 22);

  private BenchWorkbook() {
    writeRecords();
    writeRepeats();
    WheelSheet.write(book);
    LeverSheet.write(book);
  }

  /** A new workbook; its formulas have no values yet. */
  static XSSFWorkbook build() {
    return new BenchWorkbook().book.workbook();
  }

  /** The same with every {@link PlantedFault}. */
  static XSSFWorkbook buildFaulty() {
    BenchWorkbook bench = new BenchWorkbook();
    PlantedFault.all()
        .forEach(fault -> bench.records.put(fault.cell(), fault.content(), bench.styles.cell()));
    return bench.book.workbook();
  }

  private void writeRecords() {
    records.put("A1", "Bicycle workshop: first lab table", styles.title());
    records.put("A2", SampleBook.CAUTION, styles.remark());
    records.merge("A2:N2", styles.remark());
    book.noticeIfFunctionsAreMissing(records, "A3");
    book.headings(records, FIRST_ROW - 1, HEADINGS);
    contributions.put("A1", "What each contribution is due to", styles.title());
    book.headings(contributions, 3, List.of("Quantity", "Kind", "Due to", "Size"));
    int row = FIRST_ROW;
    int firstContribution = 4;
    for (BenchRecord record : BenchRecords.all()) {
      int last = writeContributions(record, row, firstContribution);
      writeRecord(record, row);
      writeRationale(row, firstContribution, last);
      firstContribution = last + 1;
      row += 2;
    }
    writeComparison(row + 1);
    records.freezeBefore("B" + FIRST_ROW);
  }

  private void writeRecord(BenchRecord record, int row) {
    book.row(
        records,
        row,
        List.of(
            record.quantity(),
            record.symbol(),
            record.value(),
            record.unit(),
            record.division(),
            record.spacing(),
            record.ends()));
    for (BenchRecord.Kind kind : BenchRecord.Kind.values()) {
      records.put(kind.column() + row, "", styles.cell());
    }
    record
        .contributions()
        .forEach(part -> records.put(part.kind().column() + row, part.size(row), styles.cell()));
    records.put("M" + row, "=LAB_TOTAL(H" + row + ":L" + row + ")", styles.cell());
    records.put("N" + row, "=LAB_RESULT(C" + row + ",M" + row + ",D" + row + ")", styles.result());
    records.height(row, 28);
  }

  private int writeContributions(BenchRecord record, int recordRow, int firstRow) {
    int row = firstRow;
    for (BenchRecord.Contribution part : record.contributions()) {
      book.row(
          contributions,
          row,
          List.of(
              record.quantity(),
              part.kind().name().toLowerCase(Locale.ROOT),
              part.due(),
              "=" + RECORDS + "!" + part.kind().column() + recordRow));
      row++;
    }
    return row - 1;
  }

  private void writeRationale(int recordRow, int first, int last) {
    int row = recordRow + 1;
    records.put("A" + row, "Rationale", styles.remark());
    records.put(
        "B" + row,
        "=LAB_RATIONALE(Contributions!B" + first + ":D" + last + ",D" + recordRow + ")",
        styles.remark());
    records.merge("B" + row + ":N" + row, styles.remark());
    records.height(row, 44);
  }

  private void writeRepeats() {
    repeats.put("A1", "Wheel, time to come to rest", styles.title());
    book.headings(repeats, 3, List.of("Run", "Time to rest (s)"));
    for (int run = 0; run < SPIN_TIMES.length; run++) {
      book.row(repeats, run + 4, List.of(run + 1, SPIN_TIMES[run]));
    }
  }

  private void writeComparison(int row) {
    records.put("A" + row, "Crank arm against the maker's 172.5 mm", styles.title());
    records.put("A" + (row + 1), "Maker's length", styles.cell());
    records.put("C" + (row + 1), 172.5, styles.cell());
    records.put("D" + (row + 1), "mm", styles.cell());
    records.put("M" + (row + 1), 0.2, styles.cell());
    records.put("A" + (row + 2), "Do they agree?", styles.cell());
    String arguments =
        "(C" + FIRST_ROW + ",M" + FIRST_ROW + ",C" + (row + 1) + ",M" + (row + 1) + ")";
    records.put("B" + (row + 2), "=LAB_AGREE" + arguments, styles.result());
    records.merge("B" + (row + 2) + ":L" + (row + 2), styles.result());
    records.put("M" + (row + 2), "=LAB_GAP" + arguments, styles.cell());
    records.put("N" + (row + 2), "of what is allowed", styles.cell());
    records.height(row + 2, 28);
  }
}
