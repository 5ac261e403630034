package tenthmark.samples;

import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.measurement.catalogue.Catalogue;

/** Builds the first lab table: records with their rationale, and one comparison. */
final class BenchWorkbook {

  static final String RECORDS = "Records";

  private static final int FIRST_ROW = 5;
  private static final String CAUTION =
      "A teaching aid, with invented numbers: not for calibration, safety or legal decisions. Work"
          + " on brakes and tyres follows the maker's manual and the lab's safety rules.";
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

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final Catalogue catalogue = Catalogue.load();
  private final Styles styles = Styles.of(workbook);
  private final SheetWriter records;
  private final SheetWriter contributions;
  private final SheetWriter repeats;

  private BenchWorkbook() {
    workbook.setCellFormulaValidation(false);
    records = sheet(RECORDS, 32, 9, 10, 7, 9, 9, 7, 10, 10, 11, 9, 9, 12, 19);
    contributions = sheet("Contributions", 34, 13, 52, 14);
    repeats = sheet("Repeats", 12, 22);
  }

  /** A new workbook; its formulas have no values yet. */
  static XSSFWorkbook build() {
    BenchWorkbook bench = new BenchWorkbook();
    bench.writeRepeats();
    bench.writeRecords();
    return bench.workbook;
  }

  /** The same with every {@link PlantedFault}. */
  static XSSFWorkbook buildFaulty() {
    BenchWorkbook bench = new BenchWorkbook();
    bench.writeRepeats();
    bench.writeRecords();
    PlantedFault.all()
        .forEach(fault -> bench.records.put(fault.cell(), fault.content(), bench.styles.cell()));
    return bench.workbook;
  }

  private SheetWriter sheet(String name, int... widths) {
    Sheet sheet = workbook.createSheet(name);
    for (int column = 0; column < widths.length; column++) {
      sheet.setColumnWidth(column, widths[column] * 256);
    }
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    return new SheetWriter(sheet, catalogue);
  }

  private void writeRecords() {
    records.put("A1", "Bicycle workshop: first lab table", styles.title());
    records.put("A2", CAUTION, styles.remark());
    records.merge("A2:N2", styles.remark());
    headings(records, FIRST_ROW - 1, HEADINGS);
    contributions.put("A1", "What each contribution is due to", styles.title());
    headings(contributions, 3, List.of("Quantity", "Kind", "Due to", "Size"));
    int row = FIRST_ROW;
    int firstContribution = 4;
    for (BenchRecord record : BenchRecords.all()) {
      int last = writeContributions(record, row, firstContribution);
      writeRecord(record, row);
      writeRationale(record, row, firstContribution, last);
      firstContribution = last + 1;
      row += 2;
    }
    writeComparison(row + 1);
    records.freezeBefore("B" + FIRST_ROW);
  }

  private void writeRecord(BenchRecord record, int row) {
    List<Object> cells =
        List.of(
            record.quantity(),
            record.symbol(),
            record.value(),
            record.unit(),
            record.division(),
            record.spacing(),
            record.ends());
    for (int column = 0; column < cells.size(); column++) {
      records.put(address(column, row), cells.get(column), styles.cell());
    }
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
      contributions.put("A" + row, record.quantity(), styles.cell());
      contributions.put("B" + row, part.kind().name().toLowerCase(Locale.ROOT), styles.cell());
      contributions.put("C" + row, part.due(), styles.cell());
      contributions.put(
          "D" + row, "=" + RECORDS + "!" + part.kind().column() + recordRow, styles.cell());
      row++;
    }
    return row - 1;
  }

  private void writeRationale(BenchRecord record, int recordRow, int first, int last) {
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
    headings(repeats, 3, List.of("Run", "Time to rest (s)"));
    for (int run = 0; run < SPIN_TIMES.length; run++) {
      repeats.put("A" + (run + 4), run + 1, styles.cell());
      repeats.put("B" + (run + 4), SPIN_TIMES[run], styles.cell());
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

  private void headings(SheetWriter sheet, int row, List<String> headings) {
    for (int column = 0; column < headings.size(); column++) {
      sheet.put(address(column, row), headings.get(column), styles.heading());
    }
  }

  private static String address(int column, int row) {
    return (char) ('A' + column) + Integer.toString(row);
  }
}
