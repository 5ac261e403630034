package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Message;

/** A total whose range leaves a column of contributions out that is still empty in its row. */
@AutoService(Rule.class)
public final class TotalShort implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("total-short", Severity.WARNING);

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
    List<String> functions =
        cell.content() instanceof Content.Formula formula ? formula.functions() : List.of();
    return !functions.isEmpty() && NativeFunctions.TOTALS.containsAll(functions);
  }

  private static Optional<Finding> check(
      MeasurementRecord measurement, Cell total, List<CellRange> ranges) {
    boolean overContributions =
        ranges.stream()
            .filter(range -> range.width() > 1 || range.height() > 1)
            .anyMatch(range -> contributions(measurement).anyMatch(range::contains));
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
        .filter(place -> ranges.stream().noneMatch(range -> range.contains(place)))
        .filter(
            place ->
                measurement.cell(field).isEmpty()
                    || measurement.number(field).filter(size -> size == 0).isPresent())
        .isPresent();
  }

  private static Finding finding(MeasurementRecord measurement, Cell total, Field field) {
    return DECLARATION.finding(
        total.address(),
        Message.of(
            "total-short.found",
            measurement.name(),
            ((Content.Formula) total.content()).shown(),
            field.inWords()),
        Message.of("total-short.expected", measurement.placeOrValue(field).place()));
  }
}
