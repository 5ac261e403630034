package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * The uncertainty of a mean that is computed from the scatter of its readings in a way that is not
 * that of a mean: the deviation of a single reading, that of a whole population, or a root of
 * another number.
 */
@AutoService(Rule.class)
public final class RepeatDiffers implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("repeat-differs", Severity.WARNING);

  private static final int MOST = 200;

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<Series> series =
        measurement.cell(Field.VALUE).flatMap(cell -> Series.of(cell, inspection));
    return series.flatMap(
        readings ->
            Stream.of(Field.REPEAT, Field.UNCERTAINTY)
                .flatMap(part -> measurement.cell(part).stream())
                .flatMap(cell -> parts(cell, inspection.evaluation()))
                .filter(cell -> isOfScatter(cell, readings, inspection))
                .flatMap(cell -> finding(cell, measurement, readings, inspection).stream())
                .findFirst());
  }

  /** The cell, and where it only adds up, what it adds. */
  private static Stream<Cell> parts(Cell cell, Evaluation evaluation) {
    boolean adds =
        cell.content() instanceof Content.Formula formula
            && formula.functions().stream()
                .allMatch(name -> name.equals("MAX") || NativeFunctions.TOTALS.contains(name))
            && !formula.text().contains("/")
            && !formula.text().contains("*");
    return Stream.concat(
        Stream.of(cell), adds ? evaluation.precedents(cell).stream() : Stream.empty());
  }

  /** Whether a cell is computed from the deviation of just these readings, and nothing else. */
  private static boolean isOfScatter(Cell cell, Series series, Inspection inspection) {
    Collection<Cell> behind = inspection.evaluation().behind(cell.address(), Set.of());
    return behind.stream()
            .flatMap(step -> NativeFunctions.of(step).stream())
            .anyMatch(function -> function.startsWith("STDEV"))
        && behind.stream()
            .map(Cell::address)
            .filter(address -> !series.readings().containsKey(address))
            .allMatch(address -> isStep(address, inspection));
  }

  /** A formula on the way, or the number of readings. */
  private static boolean isStep(CellAddress address, Inspection inspection) {
    return inspection.workbook().at(address).stream()
        .anyMatch(
            cell ->
                cell.content() instanceof Content.Formula
                    || inspection
                        .evaluation()
                        .number(address)
                        .filter(number -> number > 1 && number == Math.rint(number))
                        .isPresent());
  }

  private static Optional<Finding> finding(
      Cell cell, MeasurementRecord measurement, Series series, Inspection inspection) {
    Spread spread = Spread.of(series.values());
    return inspection
        .evaluation()
        .number(cell.address())
        .filter(size -> spread.deviation() > 0 && !Numbers.agreesAsWritten(size, spread.ofMean()))
        .flatMap(size -> reason(size, spread))
        .map(
            reason ->
                DECLARATION.finding(
                    cell.address(),
                    Message.of("repeat-differs.found", measurement.name(), reason),
                    Message.of(
                        "repeat-differs.expected",
                        Numbers.showBriefly(spread.ofMean()),
                        Numbers.showBriefly(spread.deviation()),
                        spread.count())));
  }

  private static Optional<Message> reason(double size, Spread spread) {
    if (Numbers.same(size, spread.deviation())) {
      return Optional.of(Message.of("repeat-differs.single", Numbers.showBriefly(size)));
    }
    if (Numbers.same(size, spread.ofPopulation())
        || Numbers.same(size, spread.ofPopulation() / Math.sqrt(spread.count()))) {
      return Optional.of(Message.of("repeat-differs.population", Numbers.showBriefly(size)));
    }
    double number = Math.pow(spread.deviation() / size, 2);
    long whole = Math.round(number);
    return whole >= 2 && whole <= MOST && Numbers.same(number, (double) whole)
        ? Optional.of(
            Message.of("repeat-differs.number", Numbers.showBriefly(size), whole, spread.count()))
        : Optional.empty();
  }
}
