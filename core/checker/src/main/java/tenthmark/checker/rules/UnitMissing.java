package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Message;

/** A record without unit. */
@AutoService(Rule.class)
public final class UnitMissing implements AbsenceRule {

  private static final Pattern RATIO =
      Pattern.compile("\\(?\\$?[A-Z]{1,3}\\$?\\d+/\\$?[A-Z]{1,3}\\$?\\d+\\)?");

  private static final Pattern COUNT = Pattern.compile("[nN](?:_?[\\p{N}₀-₉])?");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("unit-missing", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Field part() {
    return Field.UNIT;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    boolean stated = !measurement.unit().isEmpty() || measurement.cell(Field.UNIT).isPresent();
    return stated || measurement.isUnitTold() || mayBePure(measurement, inspection)
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNIT),
                Message.of("unit-missing.found", measurement.name()),
                Message.of("unit-missing.expected")));
  }

  /** Counts, logarithms and ratios have no unit. */
  private static boolean mayBePure(MeasurementRecord measurement, Inspection inspection) {
    return inspection.expectations().isPureNumber(measurement)
        || measurement
            .text(Field.QUANTITY)
            .filter(name -> inspection.course().headings().mentions(Notion.PURE, name))
            .isPresent()
        || isCount(measurement)
        || measurement.isFormula(Field.VALUE) && !inspection.units().givesUnit(measurement)
        || isRatio(measurement, inspection)
        || isSlopeOfNumbers(measurement, inspection);
  }

  /** What goes by the letter n is how often something was counted. */
  private static boolean isCount(MeasurementRecord measurement) {
    return measurement
        .text(Field.SYMBOL)
        .filter(symbol -> COUNT.matcher(symbol).matches())
        .isPresent();
  }

  /** Whether the value is the slope of a line through values without unit. */
  private static boolean isSlopeOfNumbers(MeasurementRecord measurement, Inspection inspection) {
    return measurement.isSlope()
        && measurement.cell(Field.VALUE).stream()
            .flatMap(cell -> inspection.evaluation().references(cell).stream())
            .anyMatch(
                range ->
                    inspection.records().stream()
                        .filter(
                            other -> other.place(Field.VALUE).filter(range::contains).isPresent())
                        .anyMatch(other -> other.unit().equals("1")));
  }

  /** Whether the value is the ratio of two others in one unit. */
  private static boolean isRatio(MeasurementRecord measurement, Inspection inspection) {
    Optional<Cell> ratio =
        measurement
            .cell(Field.VALUE)
            .filter(
                cell ->
                    cell.content() instanceof Content.Formula formula
                        && RATIO.matcher(formula.text()).matches());
    if (ratio.isEmpty()) {
      return false;
    }
    List<CellAddress> parts =
        inspection.evaluation().references(ratio.get()).stream().map(CellRange::first).toList();
    List<String> units =
        inspection.records().stream()
            .filter(other -> other.place(Field.VALUE).filter(parts::contains).isPresent())
            .map(MeasurementRecord::unit)
            .toList();
    return units.size() == 2 && RecordUnits.same(units.get(0), units.get(1));
  }
}
