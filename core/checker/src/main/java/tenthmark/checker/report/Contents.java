package tenthmark.checker.report;

import java.util.List;
import java.util.Optional;
import tenthmark.checker.reading.CoverageSummary;
import tenthmark.checker.rules.ExpectedRecord;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.wording.Message;

/**
 * What the checker read in a workbook, small enough to be kept for a whole class.
 *
 * @param sheets in their order
 * @param records the measurement records that were recognised, sheet by sheet
 * @param coverage what the numbers were taken for, and what was not read
 * @param quantities the values of what the course expects, in its order and its units
 * @param convention by which the workbook was checked, in sentences
 * @param rawData the typed-in numbers that the records' values are, or are computed from
 */
public record Contents(
    List<SheetSize> sheets,
    List<RecordSummary> records,
    CoverageSummary coverage,
    List<QuantityValue> quantities,
    List<Message> convention,
    List<Double> rawData) {

  /** Of a file that could not be checked. */
  public static final Contents NONE =
      new Contents(List.of(), List.of(), CoverageSummary.NONE, List.of(), List.of(), List.of());

  /**
   * How much a sheet holds.
   *
   * @param hidden whether the user does not see it
   * @param cells that hold something, formulas included
   */
  public record SheetSize(String name, boolean hidden, int cells, int formulas) {

    private static SheetSize of(Sheet sheet) {
      List<Content> contents = sheet.cells().map(Cell::content).toList();
      long formulas = contents.stream().filter(Content.Formula.class::isInstance).count();
      return new SheetSize(sheet.name(), sheet.hidden(), contents.size(), (int) formulas);
    }
  }

  /**
   * A value of a quantity that the course expects.
   *
   * @param quantity what the course calls it
   * @param value in the course's unit
   * @param uncertainty in the course's unit; empty if it is missing
   */
  public record QuantityValue(String quantity, double value, Optional<Double> uncertainty) {

    private static Optional<QuantityValue> of(ExpectedRecord expected) {
      return expected
          .value()
          .map(
              value ->
                  new QuantityValue(expected.quantity().name(), value, expected.uncertainty()));
    }
  }

  /** Copies the lists. */
  public Contents {
    sheets = List.copyOf(sheets);
    records = List.copyOf(records);
    quantities = List.copyOf(quantities);
    convention = List.copyOf(convention);
    rawData = Numbers.copyOf(rawData);
  }

  /** Whether nothing was read in a workbook with numbers, so that nothing was checked. */
  public boolean nothingWasRead() {
    return coverage.isNothing(records.size());
  }

  static Contents of(Inspection inspection) {
    return new Contents(
        inspection.workbook().sheets().stream().map(SheetSize::of).toList(),
        inspection.records().stream().map(RecordSummary::of).toList(),
        inspection.coverage(),
        inspection.expectations().records().stream()
            .flatMap(expected -> QuantityValue.of(expected).stream())
            .toList(),
        ConventionText.of(inspection.convention()),
        RawData.of(inspection));
  }
}
