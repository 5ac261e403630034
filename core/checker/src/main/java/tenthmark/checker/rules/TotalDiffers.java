package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.recording.Combine;

/** A total that its contributions do not make, combined in either way. */
@AutoService(Rule.class)
public final class TotalDiffers implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "total-differs",
          Severity.ERROR,
          "A total uncertainty that is neither the sum of its contributions nor the root of their "
              + "squares' sum.",
          "A total that leaves a contribution out, or counts one twice, misleads.",
          "Let =LAB_TOTAL(...) compute the total over all contributions of the row.",
          "Contributions 0.25 and 0.2 with a total of 0.25; 0.45 (straight) or 0.32 "
              + "(quadrature) is right.");

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
                "the total of " + measurement.name() + " is " + Numbers.show(total.get()),
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

  private static String expected(Map<Field, Double> contributions, List<Double> sizes) {
    String parts =
        contributions.entrySet().stream()
            .map(part -> part.getKey().word() + " " + Numbers.show(part.getValue()))
            .collect(Collectors.joining(" + "));
    return Numbers.show(Combine.STRAIGHT.total(sizes))
        + " (straight: "
        + parts
        + ") or "
        + Numbers.show(Combine.QUADRATURE.total(sizes))
        + " (quadrature of the same)";
  }
}
