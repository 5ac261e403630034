package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
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
    Map<CellAddress, Double> unnamed = unnamed(measurement, inspection.evaluation());
    Optional<Double> total = measurement.number(Field.UNCERTAINTY);
    boolean comparable =
        measurement.contributionsAreNumbers() && UnitsMixed.units(measurement).size() <= 1;
    if (total.isEmpty() || contributions.isEmpty() || !comparable) {
      return Optional.empty();
    }
    List<Double> named = List.copyOf(contributions.values());
    List<Double> all = Stream.concat(named.stream(), unnamed.values().stream()).toList();
    boolean fits =
        Stream.of(named, all)
            .flatMap(sizes -> Arrays.stream(Combine.values()).map(way -> way.total(sizes)))
            .anyMatch(exact -> agrees(measurement, total.get(), exact));
    return fits
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNCERTAINTY),
                Message.of("total-differs.found", measurement.name(), Numbers.show(total.get())),
                expected(parts(contributions, unnamed), all)));
  }

  /** What the total's formula takes from columns of the record that have no heading of ours. */
  private static Map<CellAddress, Double> unnamed(
      MeasurementRecord measurement, Evaluation evaluation) {
    Map<CellAddress, Double> unnamed = new LinkedHashMap<>();
    measurement
        .cell(Field.UNCERTAINTY)
        .filter(total -> measurement.isFormula(Field.UNCERTAINTY))
        .map(evaluation::precedents)
        .orElse(List.of())
        .stream()
        .map(Cell::address)
        .filter(measurement::isBesideParts)
        .forEach(
            place ->
                evaluation
                    .number(place)
                    .filter(size -> size != 0)
                    .ifPresent(size -> unnamed.put(place, size)));
    return unnamed;
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

  private static List<Message> parts(
      Map<Field, Double> contributions, Map<CellAddress, Double> unnamed) {
    return Stream.concat(
            contributions.entrySet().stream().map(part -> part(part.getKey().inWords(), part)),
            unnamed.entrySet().stream()
                .map(part -> part(Message.verbatim(part.getKey().place()), part)))
        .toList();
  }

  private static Message part(Message name, Map.Entry<?, Double> size) {
    return Message.of("contribution", name, Numbers.show(size.getValue()));
  }

  private static Message expected(List<Message> parts, List<Double> sizes) {
    Message straight = Numbers.show(Combine.STRAIGHT.total(sizes));
    return parts.size() == 1
        ? Message.of("total.alone", straight, parts.get(0))
        : Message.of(
            "list.or",
            Message.of("total.straight", straight, Message.joined("list.plus", parts)),
            Message.of("total.quadrature", Numbers.show(Combine.QUADRATURE.total(sizes))));
  }
}
