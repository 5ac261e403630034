package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.evaluation.StoredResults;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.unit.UnitText;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.result.TextualNumber;
import tenthmark.measurement.wording.Message;

/**
 * Numbers typed as text that formulas refer to. Whether 172,5 is a number depends on the language
 * of the program: one calculates with it, another shows an error or leaves it out of a sum without
 * a word, and no formula is at fault.
 */
@AutoService(Rule.class)
public final class NumberAsText implements Rule {

  private static final Pattern DECIMAL =
      Pattern.compile("[\\p{Z}\\s]*[-+−]?\\d+[.,]\\d+(?:[eE][-+]?\\d+)?[\\p{Z}\\s]*");

  /** What a text in place of a number cannot bring about. */
  private static final Set<String> OTHER_ERRORS = Set.of("#NAME?", "#REF!", "~CIRCULAR~REF~");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("number-as-text", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    Set<Cell> numbers =
        inspection
            .formulas()
            .flatMap(
                cell ->
                    Stream.concat(
                        behindError(cell, inspection.evaluation()), passedOver(cell, inspection)))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return numbers.stream().findFirst().map(first -> finding(first, numbers, inspection)).stream()
        .toList();
  }

  /** The numbers as text that a formula refers to which could not calculate with them. */
  private static Stream<Cell> behindError(Cell formula, Evaluation evaluation) {
    return isInError(formula, evaluation)
            || isRefused(formula, evaluation)
            || new StoredResults(evaluation).isStale(formula)
        ? evaluation.precedents(formula).stream().filter(cell -> isTextualNumber(cell, evaluation))
        : Stream.empty();
  }

  /** The numbers as text in the ranges of a formula that leaves them out without a word. */
  private static Stream<Cell> passedOver(Cell formula, Inspection inspection) {
    List<String> functions = ((Content.Formula) formula.content()).functions();
    return functions.isEmpty() || !NativeFunctions.PASSING_OVER_TEXTS.containsAll(functions)
        ? Stream.empty()
        : inspection.evaluation().references(formula).stream()
            .flatMap(
                range ->
                    inspection.workbook().sheet(range.sheet()).stream()
                        .flatMap(sheet -> sheet.cells(range)))
            .filter(cell -> isTextualNumber(cell, inspection.evaluation()));
  }

  /** One with its unit is a text in every program; what is no unit may be a word about a count. */
  private static boolean isTextualNumber(Cell cell, Evaluation evaluation) {
    return isNumber(cell, evaluation)
        || text(cell, evaluation)
            .flatMap(TextualNumber::in)
            .filter(number -> !number.unit().isEmpty())
            .filter(
                number -> !(UnitReader.STANDARD.read(number.unit()) instanceof UnitText.Unknown))
            .isPresent();
  }

  private static boolean isNumber(Cell cell, Evaluation evaluation) {
    return text(cell, evaluation).filter(NumberAsText::isDecimal).isPresent();
  }

  /** Functions of lines take numbers only: the formula itself, not one behind it, is refused. */
  private static boolean isRefused(Cell formula, Evaluation evaluation) {
    return evaluation.at(formula.address()) instanceof Outcome.NotCheckable refused
        && refused.origin().equals(formula.address());
  }

  /** A LAB function in error names the text itself. */
  private static boolean isInError(Cell formula, Evaluation evaluation) {
    return evaluation.at(formula.address()) instanceof Outcome.Known known
        && known.value() instanceof Value.Fault fault
        && !OTHER_ERRORS.contains(fault.reason())
        && evaluation.sentence(formula.address()).isEmpty();
  }

  private static Optional<String> text(Cell cell, Evaluation evaluation) {
    return evaluation.at(cell.address()) instanceof Outcome.Known known
            && known.value() instanceof Value.Text text
        ? Optional.of(text.text())
        : Optional.empty();
  }

  private static boolean isDecimal(String text) {
    return DECIMAL.matcher(text).matches();
  }

  private static Finding finding(Cell first, Set<Cell> numbers, Inspection inspection) {
    String number = text(first, inspection.evaluation()).orElseThrow().strip();
    return DECLARATION
        .finding(
            first.address(),
            Message.counted("number-as-text.found", numbers.size(), number),
            Message.of("number-as-text.expected"))
        .mendedBy(
            Stream.concat(
                    numbers.stream().map(cell -> asNumber(cell, inspection.evaluation())),
                    withoutResults(numbers, inspection))
                .toList());
  }

  /** What a program stored that could calculate with some of them or with none tells nothing. */
  private static Stream<Mend> withoutResults(Set<Cell> numbers, Inspection inspection) {
    Evaluation evaluation = inspection.evaluation();
    Set<CellAddress> places = numbers.stream().map(Cell::address).collect(Collectors.toSet());
    return inspection
        .formulas()
        .filter(cell -> evaluation.dependsOn(cell.address(), places))
        .map(cell -> new Mend(cell.address(), ((Content.Formula) cell.content()).typedAnew()));
  }

  private static Mend asNumber(Cell cell, Evaluation evaluation) {
    TextualNumber typed =
        text(cell, evaluation).map(String::strip).flatMap(TextualNumber::in).orElseThrow();
    return Mend.number(cell.address(), typed.number().doubleValue());
  }
}
