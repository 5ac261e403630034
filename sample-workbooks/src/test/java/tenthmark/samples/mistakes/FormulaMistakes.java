package tenthmark.samples.mistakes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;

/** Mistakes in formulas, whatever they compute. */
final class FormulaMistakes {

  private static final String FAMILY = "formulas";
  private static final double NOTICEABLE = 0.02;
  private static final Pattern NUMBER = Pattern.compile("(?<![A-Z$\\d.])\\d+\\.\\d+(?![\\d(])");
  private static final Pattern CELL = Pattern.compile("(?<![A-Z!'$:.])([A-Z])(\\d+)(?![\\d(:])");
  private static final Set<String> CARRIED = Set.of("carried-differs");
  private static final Set<String> COPIES = Set.of("copy-differs", "typed-over");

  private FormulaMistakes() {}

  static List<Mistake> all() {
    return List.of(
        new Mistake(
            "calculated value typed among copies of its formula",
            FAMILY,
            Set.of("typed-over"),
            subject ->
                amongCopies(subject)
                    .map(cell -> Planted.number(cell, subject.number(cell).orElseThrow() * 1.03))),
        new Mistake(
            "a factor put into one of several copies",
            FAMILY,
            COPIES,
            subject -> edited(subject, amongCopies(subject), text -> "(" + text + ")*1.05")),
        new Mistake(
            "another constant in one of several copies",
            FAMILY,
            COPIES,
            subject -> edited(subject, amongCopies(subject), FormulaMistakes::otherConstant)),
        new Mistake(
            "one of several copies refers to the row above",
            FAMILY,
            COPIES,
            subject -> edited(subject, amongCopies(subject), FormulaMistakes::rowAbove)),
        new Mistake(
            "reference that is lost",
            FAMILY,
            Set.of("error-cell"),
            subject ->
                subject
                    .records("calculated")
                    .flatMap(
                        record -> formula(subject, record, record.value(), FormulaMistakes::lost))),
        new Mistake(
            "carried uncertainty of half the size",
            FAMILY,
            CARRIED,
            subject -> uncertainties(subject, text -> "(" + text + ")/2")),
        new Mistake(
            "relative uncertainty stated as an absolute one",
            FAMILY,
            CARRIED,
            subject ->
                calculated(subject)
                    .flatMap(
                        record ->
                            formula(
                                subject,
                                record,
                                record.uncertainty().orElseThrow(),
                                text -> "(" + text + ")/" + record.value().place()))),
        new Mistake(
            "input left out of a carried uncertainty",
            FAMILY,
            CARRIED,
            subject -> uncertainties(subject, FormulaMistakes::withoutTerm)),
        new Mistake(
            "carried uncertainty typed, from another run",
            FAMILY,
            CARRIED,
            subject ->
                calculated(subject)
                    .map(
                        record ->
                            Planted.number(
                                    record.uncertainty().orElseThrow(),
                                    1.6
                                        * subject
                                            .number(record.uncertainty().orElseThrow())
                                            .orElseThrow())
                                .near(record.places()))),
        new Mistake(
            "carried uncertainty doubled",
            FAMILY,
            CARRIED,
            subject -> uncertainties(subject, text -> "2*(" + text + ")")),
        new Mistake(
            "root left out of a carried uncertainty",
            FAMILY,
            CARRIED,
            subject -> uncertainties(subject, text -> text.replaceFirst("SQRT\\(", "("))),
        new Mistake(
            "factor of a power left out of a carried uncertainty",
            FAMILY,
            CARRIED,
            subject ->
                uncertainties(subject, text -> text.replaceFirst("(?<![\\d.A-Z$])2\\*", ""))),
        new Mistake(
            "square left out of a carried uncertainty",
            FAMILY,
            CARRIED,
            subject -> uncertainties(subject, text -> text.replaceFirst("\\^2", ""))),
        new Mistake(
            "uncertainties subtracted",
            FAMILY,
            CARRIED,
            subject -> uncertainties(subject, text -> text.replaceFirst("\\+", "-"))),
        new Mistake(
            "largest contribution alone carried",
            FAMILY,
            CARRIED,
            subject ->
                uncertainties(
                    subject,
                    text -> text.startsWith("SUM(") ? text.replaceFirst("SUM", "MAX") : text)),
        new Mistake(
            "division by zero",
            FAMILY,
            Set.of("error-cell"),
            subject -> values(subject, text -> "(" + text + ")/0")),
        new Mistake(
            "function misspelt",
            FAMILY,
            Set.of("error-cell", "not-checkable"),
            subject -> values(subject, text -> "SQTR(" + text + ")")),
        new Mistake(
            "formula that refers to itself",
            FAMILY,
            Set.of("error-cell", "not-checkable"),
            subject ->
                subject
                    .records("calculated")
                    .flatMap(
                        record ->
                            formula(
                                subject,
                                record,
                                record.value(),
                                text -> text + "+" + record.value().place()))),
        new Mistake(
            "reference to an empty cell",
            FAMILY,
            Set.of("error-cell", "carried-differs", "copy-differs"),
            subject -> values(subject, FormulaMistakes::empty)),
        new Mistake(
            "stored result of other inputs",
            FAMILY,
            Set.of("result-stale"),
            subject ->
                subject
                    .records("calculated")
                    .filter(record -> subject.formula(record.value()).isPresent())
                    .filter(
                        record -> subject.number(record.value()).filter(n -> n != 0).isPresent())
                    .map(record -> stale(subject, record))));
  }

  private static Planted stale(Subject subject, Stated record) {
    String text = subject.formula(record.value()).orElseThrow();
    double stored = 1.2 * subject.number(record.value()).orElseThrow();
    return Planted.at(
            record.value(),
            new Content.Formula(
                text, text, Optional.of(new Content.Number(stored)), Optional.empty()))
        .near(record.places());
  }

  private static Stream<Planted> values(Subject subject, UnaryOperator<String> edit) {
    return subject
        .records("calculated")
        .flatMap(record -> formula(subject, record, record.value(), edit));
  }

  private static String empty(String formula) {
    Matcher cell = CELL.matcher(formula);
    return cell.find() ? replaced(formula, cell, "Y999") : formula;
  }

  private static Stream<CellAddress> amongCopies(Subject subject) {
    return subject
        .formulas()
        .filter(subject::isAmongCopies)
        .filter(cell -> subject.number(cell).filter(number -> number != 0).isPresent());
  }

  private static Stream<Stated> calculated(Subject subject) {
    return subject
        .records("calculated")
        .filter(record -> record.uncertainty().flatMap(subject::number).isPresent());
  }

  private static Stream<Planted> uncertainties(Subject subject, UnaryOperator<String> edit) {
    return calculated(subject)
        .flatMap(record -> formula(subject, record, record.uncertainty().orElseThrow(), edit));
  }

  private static Stream<Planted> edited(
      Subject subject, Stream<CellAddress> cells, UnaryOperator<String> edit) {
    return cells.flatMap(cell -> changed(subject, cell, edit).stream());
  }

  static Stream<Planted> formula(
      Subject subject, Stated record, CellAddress cell, UnaryOperator<String> edit) {
    return changed(subject, cell, edit).map(planted -> planted.near(record.places())).stream();
  }

  /** A formula edited so that its value is noticeably another one, or none. */
  static Optional<Planted> changed(Subject subject, CellAddress cell, UnaryOperator<String> edit) {
    Optional<String> formula = subject.formula(cell);
    Optional<Double> before = subject.number(cell);
    return formula
        .map(edit)
        .filter(text -> !text.equals(formula.get()))
        .map(text -> Planted.formula(cell, text))
        .filter(
            planted -> before.isPresent() && isOther(before.get(), subject.after(planted, cell)));
  }

  private static boolean isOther(double before, Optional<Double> after) {
    return after
        .filter(number -> Math.abs(number - before) <= NOTICEABLE * Math.abs(before))
        .isEmpty();
  }

  private static String otherConstant(String formula) {
    Matcher number = NUMBER.matcher(formula);
    return number.find()
        ? replaced(formula, number, String.valueOf(Double.parseDouble(number.group()) * 1.1))
        : formula;
  }

  private static String rowAbove(String formula) {
    Matcher cell = CELL.matcher(formula);
    return cell.find() && Integer.parseInt(cell.group(2)) > 1
        ? replaced(formula, cell, cell.group(1) + (Integer.parseInt(cell.group(2)) - 1))
        : formula;
  }

  private static String lost(String formula) {
    Matcher cell = CELL.matcher(formula);
    return cell.find() ? replaced(formula, cell, "#REF!") : formula;
  }

  /** The formula of a sum without its last term, be it under a root or after a factor. */
  private static String withoutTerm(String formula) {
    int depth = 0;
    for (int i = formula.length() - 1; i > 0; i--) {
      char c = formula.charAt(i);
      depth += c == ')' ? 1 : c == '(' ? -1 : 0;
      if (c == '+' && depth <= 1) {
        return formula.substring(0, i) + formula.substring(end(formula, i + 1));
      }
    }
    return formula;
  }

  /** Where the term that begins at a place ends: at a closing bracket, a sum's sign or the end. */
  private static int end(String formula, int from) {
    int depth = 0;
    for (int i = from; i < formula.length(); i++) {
      char c = formula.charAt(i);
      if (depth == 0 && (c == ')' || c == '+' || c == ',')) {
        return i;
      }
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
    }
    return formula.length();
  }

  static String replaced(String formula, Matcher found, String by) {
    return formula.substring(0, found.start()) + by + formula.substring(found.end());
  }
}
