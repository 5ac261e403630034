package tenthmark.checker.rules;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.wording.Message;

/**
 * A stated total beside what its contributions make.
 *
 * @param total as it is stated
 * @param contributions those in columns of their own
 * @param unnamed those that the total's formula takes from elsewhere in the record
 */
record TotalComparison(
    MeasurementRecord measurement,
    double total,
    Map<Field, Double> contributions,
    Map<CellAddress, Double> unnamed,
    Expansion expansion) {

  /** Empty where the record states no total or its parts cannot be added. */
  static Optional<TotalComparison> of(MeasurementRecord measurement, Inspection inspection) {
    Map<Field, Double> contributions = measurement.contributions();
    boolean comparable =
        !contributions.isEmpty()
            && measurement.contributionsAreNumbers()
            && RecordUnits.ofSum(measurement).size() <= 1;
    return measurement
        .number(Field.UNCERTAINTY)
        .filter(total -> comparable)
        .map(
            total ->
                new TotalComparison(
                    measurement,
                    total,
                    contributions,
                    unnamed(measurement, inspection.evaluation()),
                    inspection.expansion()));
  }

  /** The ways of combining that give the stated total. */
  Set<Combine> fitting() {
    List<Double> named = List.copyOf(contributions.values());
    Set<Combine> fitting = EnumSet.noneOf(Combine.class);
    for (Combine way : Combine.values()) {
      boolean fits =
          Stream.of(named, sizes())
              .flatMap(sizes -> expansion.sizes(way.total(sizes)))
              .anyMatch(exact -> agrees(measurement, total, exact));
      if (fits) {
        fitting.add(way);
      }
    }
    return fitting;
  }

  private List<Double> sizes() {
    return Stream.concat(contributions.values().stream(), unnamed.values().stream()).toList();
  }

  /** What the contributions make in one way. */
  double size(Combine way) {
    return way.total(sizes());
  }

  Message found() {
    return Message.of("total-differs.found", measurement.name(), Numbers.show(total));
  }

  /** What the contributions make, in each way. */
  Message expected() {
    return expected(parts(contributions, unnamed), sizes());
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
