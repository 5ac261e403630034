package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.wording.Message;

/** A total that its contributions do not make, combined in either way. */
@AutoService(Rule.class)
public final class TotalDiffers implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("total-differs", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Map<Field, Double> contributions = measurement.contributions();
    Optional<Double> total = measurement.number(Field.UNCERTAINTY);
    boolean comparable =
        measurement.contributionsAreNumbers() && UnitsMixed.units(measurement).size() <= 1;
    if (total.isEmpty() || contributions.isEmpty() || !comparable) {
      return Optional.empty();
    }
    List<Double> sizes = List.copyOf(contributions.values());
    boolean fits =
        Arrays.stream(Combine.values())
            .anyMatch(combine -> agrees(measurement, total.get(), combine.total(sizes)));
    return fits
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNCERTAINTY),
                Message.of("total-differs.found", measurement.name(), Numbers.show(total.get())),
                expected(contributions, sizes)));
  }

  /** A typed total may be rounded; a formula's may be if the formula rounds. */
  private static boolean agrees(MeasurementRecord measurement, double total, double exact) {
    boolean exactOnly =
        measurement
            .cell(Field.UNCERTAINTY)
            .map(cell -> cell.content())
            .filter(content -> content instanceof Content.Formula)
            .map(content -> ((Content.Formula) content).text().toUpperCase(Locale.ROOT))
            .filter(formula -> !formula.contains("ROUND"))
            .isPresent();
    return exactOnly ? Numbers.same(total, exact) : Numbers.agreesAsWritten(total, exact);
  }

  private static Message expected(Map<Field, Double> contributions, List<Double> sizes) {
    List<Message> parts =
        contributions.entrySet().stream()
            .map(
                part ->
                    Message.of(
                        "contribution", part.getKey().inWords(), Numbers.show(part.getValue())))
            .toList();
    return Message.of(
        "list.or",
        Message.of(
            "total.straight",
            Numbers.show(Combine.STRAIGHT.total(sizes)),
            Message.joined("list.plus", parts)),
        Message.of("total.quadrature", Numbers.show(Combine.QUADRATURE.total(sizes))));
  }
}
