package tenthmark.measurement.explanation;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.Binary;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.Expression.Call;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.Chain;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Link;
import tenthmark.measurement.formula.Expression.Name;
import tenthmark.measurement.formula.Expression.Reference;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Operand;
import tenthmark.measurement.wording.ErrorName;
import tenthmark.measurement.wording.Sentences;

/**
 * Looks for the first part of a formula that has no value although all its own parts have, and
 * follows it into the cells that it refers to.
 */
final class Diagnosis {

  private static final int LONGEST_CHAIN = 30;

  private final Catalogue catalogue;
  private final Formulas formulas;
  private final Cells cells;
  private final Sentences sentences;
  private final Calculation calculation;
  private final Words words;
  private final Set<CellAddress> seen;
  private final Set<String> notComputable = new TreeSet<>();

  Diagnosis(
      Catalogue catalogue, Formulas formulas, Cells cells, Sentences sentences, CellAddress cell) {
    this(catalogue, formulas, cells, sentences, cell, new HashSet<>());
  }

  private Diagnosis(
      Catalogue catalogue,
      Formulas formulas,
      Cells cells,
      Sentences sentences,
      CellAddress cell,
      Set<CellAddress> seen) {
    this.catalogue = catalogue;
    this.formulas = formulas;
    this.cells = cells;
    this.sentences = sentences;
    this.calculation = new Calculation(catalogue, formulas, cells, cell, sentences);
    this.words = new Words(catalogue, new Headings(cells), sentences, cell.sheet());
    this.seen = seen;
    seen.add(cell);
  }

  Calculation calculation() {
    return calculation;
  }

  Words words() {
    return words;
  }

  /** What stopped the diagnosis in places, because only the document's own program computes it. */
  List<String> notComputable() {
    return List.copyOf(notComputable);
  }

  /** The first cause inside an expression. */
  Optional<Cause> in(Expression expression) {
    for (Expression part : needed(expression)) {
      Optional<Cause> cause = in(part);
      if (cause.isPresent()) {
        return cause;
      }
    }
    try {
      return at(expression);
    } catch (NotComputableException unknown) {
      notComputable.add(unknown.getMessage());
      return Optional.empty();
    }
  }

  /** The parts that count: of a condition only the branch that it chooses, if that can be told. */
  private List<Expression> needed(Expression expression) {
    List<Expression> parts = expression.parts();
    if (expression instanceof Call call && call.function().name().equals("IF")) {
      return chosen(parts);
    }
    if (expression instanceof ForeignCall call) {
      Optional<WorksheetFunction> function = calculation.function(call);
      return function.isPresent() ? handedOver(function.get(), parts) : parts;
    }
    return parts;
  }

  /** A function that takes the cells themselves judges them itself. */
  private static List<Expression> handedOver(WorksheetFunction function, List<Expression> parts) {
    return IntStream.range(0, parts.size())
        .filter(index -> !Calculation.takesCells(function, index))
        .mapToObj(parts::get)
        .toList();
  }

  private List<Expression> chosen(List<Expression> parts) {
    try {
      if (calculation.value(parts.get(0)) instanceof Operand.Number<Double> condition) {
        int branch = condition.value() != 0 ? 1 : 2;
        return branch < parts.size()
            ? List.of(parts.get(0), parts.get(branch))
            : List.of(parts.get(0));
      }
      return parts;
    } catch (FormulaException | ArgumentException | NotComputableException unknown) {
      return parts;
    }
  }

  private Optional<Cause> at(Expression expression) {
    try {
      if (expression instanceof Reference reference) {
        return at(reference);
      }
      calculation.value(expression);
      return Optional.empty();
    } catch (ArgumentException refused) {
      return Optional.of(argument((ForeignCall) expression, refused));
    } catch (FormulaException problem) {
      return ofEngine(expression, problem);
    }
  }

  private Optional<Cause> at(Reference reference) {
    if (reference instanceof Name name) {
      return at(name);
    }
    CellRange range = calculation.rangeOf(reference);
    List<List<CellContent>> rows = cells.rows(range);
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        CellAddress cell = new CellAddress(range.sheet(), range.left() + column, range.top() + row);
        CellContent content = rows.get(row).get(column);
        if (calculation.shown(cell, content) instanceof CellContent.Fault fault) {
          return Optional.of(behind(cell, content, fault.name()));
        }
      }
    }
    return Optional.empty();
  }

  /** The cause in what a name stands for. */
  private Optional<Cause> at(Name name) {
    Expression meaning;
    try {
      meaning = calculation.meaning(name);
    } catch (FormulaException unknown) {
      return Optional.of(ofName(unknown));
    }
    return in(meaning);
  }

  private Cause ofName(FormulaException unknown) {
    boolean undefined = unknown.said().key().equals("formula.name.none");
    return Cause.of(
        undefined ? Cause.Kind.NAME : Cause.Kind.UNREADABLE,
        sentences.say(undefined ? "why.name" : "why.unreadable", sentences.say(unknown.said())));
  }

  /** The cause in a cell that is referred to. */
  private Cause behind(CellAddress cell, CellContent content, String name) {
    String error = sentences.say(new ErrorName(name).shown());
    String said = sentences.say("why.cell", words.cell(cell), error);
    if (!(content instanceof CellContent.Formula formula)
        || seen.size() > LONGEST_CHAIN
        || seen.contains(cell)) {
      return Cause.of(Cause.Kind.CELL, said);
    }
    Optional<Cause> cause =
        new Diagnosis(catalogue, formulas, cells, sentences, cell, seen).of(formula);
    return cause
        .map(
            found ->
                new Cause(
                    found.kind(),
                    sentences.say("why.behind", words.cell(cell), error, found.sentence()),
                    found.function()))
        .orElseGet(() -> Cause.of(Cause.Kind.CELL, said));
  }

  private Optional<Cause> of(CellContent.Formula formula) {
    try {
      return in(formulas.inCell(formula.text()).tree());
    } catch (FormulaException unreadable) {
      return Optional.of(
          Cause.of(
              Cause.Kind.UNREADABLE,
              sentences.say("why.unreadable", sentences.say(unreadable.said()))));
    }
  }

  private Cause argument(ForeignCall call, ArgumentException refused) {
    WorksheetFunction function = calculation.function(call).orElseThrow();
    String sentence = function.sentence(refused, sentences);
    String where = where(function, call, refused.getMessage());
    String hint = new SplitNumbers(calculation, sentences).hint(call);
    return new Cause(
        Cause.Kind.ARGUMENT, sentence + where + hint, Optional.of(function.declaration()));
  }

  /**
   * Where the argument comes from that the sentence begins with, unless the call itself says it.
   */
  private String where(WorksheetFunction function, ForeignCall call, String sentence) {
    for (int i = 0; i < call.arguments().size(); i++) {
      Expression argument = call.arguments().get(i);
      Optional<String> name =
          Calculation.parameter(function, i)
              .map(Parameter::name)
              .filter(candidate -> sentence.startsWith(candidate + " "));
      if (name.isPresent() && refersToCells(argument)) {
        String key = isBlank(argument) ? "why.from.blank" : "why.from";
        return " " + sentences.say(key, name.get(), words.of(argument));
      }
    }
    return "";
  }

  private static boolean refersToCells(Expression expression) {
    return expression instanceof Reference
        || expression.parts().stream().anyMatch(Diagnosis::refersToCells);
  }

  private Optional<Cause> ofEngine(Expression expression, FormulaException problem) {
    Optional<Expression> divisor = zeroDivisor(expression);
    if (divisor.isPresent()) {
      String key = isBlank(divisor.get()) ? "why.division.blank" : "why.division";
      return Optional.of(
          Cause.of(Cause.Kind.DIVISION, sentences.say(key, words.of(divisor.get()))));
    }
    Optional<Cause> text =
        expression.parts().stream()
            .filter(CellReference.class::isInstance)
            .filter(part -> calculation.value(part) instanceof Operand.Text)
            .findFirst()
            .map(part -> text((CellReference) part));
    if (text.isEmpty() && !problem.isError() && expression instanceof Call call) {
      throw new NotComputableException(call.function().name());
    }
    return text.or(
        () ->
            Optional.of(
                Cause.of(
                    Cause.Kind.UNDEFINED,
                    sentences.say(
                        "why.undefined", words.of(expression), sentences.say(problem.said())))));
  }

  private Cause text(CellReference reference) {
    String held = ((Operand.Text<Double>) calculation.value(reference)).text();
    return Cause.ofTextualNumber(words.of(reference), held, sentences)
        .orElseGet(
            () -> Cause.of(Cause.Kind.TEXT, sentences.say("why.text", words.of(reference), held)));
  }

  private Optional<Expression> zeroDivisor(Expression expression) {
    if (!(expression instanceof Chain chain)) {
      return Optional.empty();
    }
    return chain.rest().stream()
        .filter(link -> link.operator() == Binary.DIVIDE)
        .map(Link::operand)
        .filter(this::isZero)
        .findFirst();
  }

  private boolean isZero(Expression expression) {
    Operand<Double> operand = calculation.value(expression);
    return operand instanceof Operand.Blank
        || operand instanceof Operand.Number<Double> number && number.value() == 0;
  }

  private boolean isBlank(Expression expression) {
    return expression instanceof Reference
        && calculation.value(expression) instanceof Operand.Blank;
  }
}
