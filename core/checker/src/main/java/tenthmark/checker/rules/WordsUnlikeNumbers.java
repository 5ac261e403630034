package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.course.AcceptedValue;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.Taken;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * A sentence that says that a result agrees with the accepted value although it does not, or the
 * reverse. What words mean is never certain, so that this is a note that quotes them.
 */
@AutoService(Rule.class)
public final class WordsUnlikeNumbers implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("words-unlike-numbers", Severity.NOTE);

  private static final int LONGEST_QUOTE = 90;

  /** Who says that a result agrees may mean twice its uncertainty. */
  private static final double GENEROUS = 2;

  /** An accepted value is of the size of the result that is set against it. */
  private static final double SAME_SIZE = 2;

  /**
   * A result beside the value that it is compared with.
   *
   * @param allowed the difference that the uncertainties allow
   */
  private record Comparison(
      MeasurementRecord measurement, double value, double accepted, double allowed) {

    double difference() {
      return Math.abs(value - accepted);
    }
  }

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    return inspection
        .sheets()
        .flatMap(sheet -> sheet.cells())
        .flatMap(cell -> finding(cell, inspection).stream())
        .toList();
  }

  private static Optional<Finding> finding(Cell cell, Inspection inspection) {
    if (!(cell.content() instanceof Content.Text text)) {
      return Optional.empty();
    }
    boolean disagrees = Vocabulary.STANDARD.mentions(Notion.DISAGREES, text.text());
    boolean agrees = !disagrees && Vocabulary.STANDARD.mentions(Notion.AGREES, text.text());
    return agrees || disagrees
        ? comparison(cell.address(), inspection)
            .filter(
                numbers ->
                    agrees
                        ? numbers.difference() > GENEROUS * numbers.allowed()
                        : numbers.difference() <= numbers.allowed())
            .map(numbers -> finding(cell.address(), text.text().strip(), numbers, agrees))
        : Optional.empty();
  }

  private static Finding finding(
      CellAddress cell, String text, Comparison numbers, boolean agrees) {
    String quote =
        text.length() > LONGEST_QUOTE ? text.substring(0, LONGEST_QUOTE).strip() + " ..." : text;
    return DECLARATION.finding(
        cell,
        Message.of("words-unlike-numbers.found", quote),
        Message.of(
            agrees ? "words-unlike-numbers.apart" : "words-unlike-numbers.near",
            numbers.measurement().name(),
            Numbers.show(numbers.value()),
            Numbers.show(numbers.accepted()),
            Numbers.showBriefly(numbers.difference()),
            Numbers.showBriefly(numbers.allowed())));
  }

  /** The one result that a sentence can mean: the course's, else the one on its sheet. */
  private static Optional<Comparison> comparison(CellAddress cell, Inspection inspection) {
    List<Comparison> ofCourse =
        inspection.expectations().records().stream()
            .flatMap(expected -> ofCourse(expected, inspection).stream())
            .toList();
    List<Comparison> all = ofCourse.isEmpty() ? onSheet(cell.sheet(), inspection) : ofCourse;
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  private static Optional<Comparison> ofCourse(ExpectedRecord expected, Inspection inspection) {
    Optional<AcceptedValue> accepted = expected.quantity().accepted();
    Optional<Double> value = expected.value();
    Optional<Double> uncertainty = expected.uncertainty();
    return accepted.isEmpty() || value.isEmpty() || uncertainty.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Comparison(
                expected.measurement(),
                value.get(),
                accepted.get().value(),
                accepted.get().gap()
                    * inspection
                        .convention()
                        .combine()
                        .total(List.of(uncertainty.get(), accepted.get().uncertainty()))));
  }

  /** The calculated results of the size of the one accepted value on a sheet. */
  private static List<Comparison> onSheet(String sheet, Inspection inspection) {
    List<Double> accepted =
        inspection.reading().coverage().cells().entrySet().stream()
            .filter(cell -> cell.getKey().sheet().equals(sheet))
            .filter(WordsUnlikeNumbers::isAccepted)
            .flatMap(cell -> inspection.evaluation().number(cell.getKey()).stream())
            .toList();
    return accepted.size() == 1
        ? inspection.records().stream()
            .filter(measurement -> measurement.isFormula(Field.VALUE))
            .flatMap(measurement -> beside(measurement, accepted.get(0)))
            .toList()
        : List.of();
  }

  private static boolean isAccepted(Map.Entry<CellAddress, Taken> cell) {
    return cell.getValue() instanceof Taken.Other other && other.role() == NumberRole.ACCEPTED;
  }

  private static Stream<Comparison> beside(MeasurementRecord measurement, double accepted) {
    Optional<Double> value = measurement.number(Field.VALUE);
    Optional<Double> uncertainty = measurement.absoluteUncertainty();
    return value.isPresent()
            && uncertainty.isPresent()
            && value.get() / accepted < SAME_SIZE
            && value.get() / accepted > 1 / SAME_SIZE
        ? Stream.of(new Comparison(measurement, value.get(), accepted, uncertainty.get()))
        : Stream.empty();
  }
}
