package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** A total whose range leaves a column of contributions out that is still empty in its row. */
@AutoService(Rule.class)
public final class TotalShort implements RecordRule {

  private static final Set<String> TOTALS = Set.of("LAB_TOTAL", "SUM", "SUMSQ", "SQRT", "ROUND");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "total-short",
          Severity.WARNING,
          "A total over a range of contributions that leaves out a column of contributions which is "
              + "empty or zero in this row.",
          "The total stays too small once the column is filled in.",
          "Extend the range over all columns of contributions.",
          "=LAB_TOTAL(G4:H4) while the column Instrument is I; =LAB_TOTAL(G4:I4) counts it as soon "
              + "as it is filled.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    return measurement
        .cell(Field.UNCERTAINTY)
        .filter(TotalShort::isTotal)
        .flatMap(cell -> check(measurement, cell, inspection.evaluation().references(cell)));
  }

  private static boolean isTotal(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        && !formula.functions().isEmpty()
        && TOTALS.containsAll(formula.functions());
  }

  private static Optional<Finding> check(
      MeasurementRecord measurement, Cell total, List<CellRange> ranges) {
    boolean overContributions =
        ranges.stream()
            .filter(range -> range.width() > 1 || range.height() > 1)
            .anyMatch(range -> contributions(measurement).anyMatch(range.cells()::contains));
    return overContributions
        ? Field.CONTRIBUTIONS.stream()
            .filter(field -> isLeftOut(measurement, field, ranges))
            .findFirst()
            .map(field -> finding(measurement, total, field))
        : Optional.empty();
  }

  private static Stream<CellAddress> contributions(MeasurementRecord measurement) {
    return Field.CONTRIBUTIONS.stream().flatMap(field -> measurement.place(field).stream());
  }

  /** A size that is there and left out makes another total, which another rule finds. */
  private static boolean isLeftOut(
      MeasurementRecord measurement, Field field, List<CellRange> ranges) {
    return measurement
        .place(field)
        .filter(place -> ranges.stream().noneMatch(range -> range.cells().contains(place)))
        .filter(
            place ->
                measurement.cell(field).isEmpty()
                    || measurement.number(field).filter(size -> size == 0).isPresent())
        .isPresent();
  }

  private static Finding finding(MeasurementRecord measurement, Cell total, Field field) {
    return DECLARATION.finding(
        total.address(),
        "the total of "
            + measurement.name()
            + ", ="
            + ((Content.Formula) total.content()).text()
            + ", leaves out the column "
            + field.word(),
        "a range that takes " + measurement.placeOrValue(field).place() + " in, empty as it is");
  }
}
