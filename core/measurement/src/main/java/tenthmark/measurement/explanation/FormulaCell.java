package tenthmark.measurement.explanation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.FunctionTexts;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Name;
import tenthmark.measurement.formula.Follower;
import tenthmark.measurement.formula.Formula;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Operand;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.ErrorName;
import tenthmark.measurement.wording.Sentences;

/**
 * A cell that holds a formula.
 *
 * @param text the formula
 */
record FormulaCell(
    Catalogue catalogue,
    Formulas formulas,
    Cells cells,
    Sentences sentences,
    CellAddress cell,
    String text) {

  /** Functions that deal with the errors of their arguments. */
  private static final Set<String> DEALING_WITH_ERRORS =
      Set.of("IFERROR", "IFNA", "ISERROR", "ISERR", "ISNA", "ERROR.TYPE", "ERRORTYPE");

  private static final Pattern DECIMAL = Pattern.compile("\\d\\.\\d");

  private static final Pattern STORED_NAME =
      Pattern.compile("TENTHMARK\\.LAB\\.", Pattern.CASE_INSENSITIVE);

  Explanation explanation() {
    Optional<CellContent.Fault> error = error();
    Formula formula;
    try {
      formula = formulas.inCell(text);
    } catch (FormulaException unreadable) {
      return unreadable(sentences.say(unreadable.said()), error);
    }
    Expression tree = formula.tree();
    Diagnosis diagnosis = new Diagnosis(catalogue, formulas, cells, sentences, cell);
    Optional<Cause> found = diagnosis.in(tree);
    Optional<Cause> cause =
        error.isPresent()
            ? Optional.of(ofError(error.get(), found, tree, diagnosis))
            : found
                .filter(known -> shown().isEmpty() || isShownAsSentence(known))
                .or(() -> doubt(tree, diagnosis));
    List<String> words = words(tree, diagnosis);
    if (!isArray()) {
      table(tree, diagnosis)
          .map(table -> sentences.say("cell.table", table.height() + "", table.width() + ""))
          .ifPresent(words::add);
    }
    if (cause.isEmpty() && found.isPresent() && dealsWithErrors(formula)) {
      words.add(sentences.say("cell.dealt", found.get().sentence()));
    }
    return new Explanation(
        cell.place(),
        withDisplayNames(text),
        words,
        contributions(tree, diagnosis),
        cause.map(known -> known.problem(sentences)),
        cause
            .flatMap(Cause::function)
            .or(() -> functions(tree).stream().findFirst())
            .map(Declaration::displayName));
  }

  /** The table that the formula gives, if a LAB function makes it one of several cells. */
  Optional<TableSize> table() {
    try {
      Expression tree = formulas.inCell(text).tree();
      return table(tree, new Diagnosis(catalogue, formulas, cells, sentences, cell));
    } catch (FormulaException unreadable) {
      return Optional.empty();
    }
  }

  private Optional<TableSize> table(Expression tree, Diagnosis diagnosis) {
    boolean givesTable =
        functions(tree).stream().anyMatch(function -> function.result() == ResultKind.TABLE);
    try {
      return givesTable
              && diagnosis.calculation().value(tree) instanceof Operand.Block<Double> block
              && block.height() * block.width() > 1
          ? Optional.of(new TableSize(block.height(), block.width()))
          : Optional.empty();
    } catch (ArgumentException | FormulaException | NotComputableException unknown) {
      // The diagnosis says what is wrong; there is no table then.
      return Optional.empty();
    }
  }

  /** Whether it fills cells as a matrix, be it one. */
  private boolean isArray() {
    return text.startsWith("{");
  }

  private Optional<Cause> wholeColumn(Expression tree, Diagnosis diagnosis) {
    Doubts doubts = new Doubts(diagnosis.calculation(), diagnosis.words(), sentences);
    return calls(tree).flatMap(call -> doubts.wholeColumn(call).stream()).findFirst();
  }

  private Optional<Cause> doubt(Expression tree, Diagnosis diagnosis) {
    Doubts doubts = new Doubts(diagnosis.calculation(), diagnosis.words(), sentences);
    return calls(tree)
        .flatMap(call -> doubts.about(call).stream())
        .findFirst()
        .or(() -> doubts.textualNumber(tree));
  }

  /** With the names that a user types. */
  private static String withDisplayNames(String formula) {
    return STORED_NAME.matcher(formula).replaceAll("LAB_");
  }

  private Optional<CellContent> shown() {
    return cells.shown(cell);
  }

  private Optional<CellContent.Fault> error() {
    return shown().filter(CellContent.Fault.class::isInstance).map(CellContent.Fault.class::cast);
  }

  private Explanation unreadable(String reason, Optional<CellContent.Fault> error) {
    Cause cause = Cause.of(Cause.Kind.UNREADABLE, sentences.say("why.unreadable", reason));
    return new Explanation(
        cell.place(),
        withDisplayNames(text),
        error.isPresent() ? List.of() : List.of(cause.sentence()),
        Optional.empty(),
        error.map(shown -> cause.problem(sentences)),
        Optional.empty());
  }

  /** A text or a table shows the sentence about a refused argument itself, without an error. */
  private static boolean isShownAsSentence(Cause cause) {
    ResultKind result = cause.function().map(Declaration::result).orElse(ResultKind.NUMBER);
    return result == ResultKind.TEXT || result == ResultKind.TABLE;
  }

  private Cause ofError(
      CellContent.Fault error, Optional<Cause> found, Expression tree, Diagnosis diagnosis) {
    return circle()
        .or(() -> found)
        .or(() -> unknownWord(error, tree))
        .or(() -> wholeColumn(tree, diagnosis))
        .orElseGet(() -> unexplained(error, diagnosis.notComputable()));
  }

  /** Calc gives a circle other errors where a function takes ranges or follows formulas. */
  private Optional<Cause> circle() {
    try {
      new Follower(formulas).model(cells, cell, List.of());
      return Optional.empty();
    } catch (FormulaException problem) {
      return problem.said().key().equals("formula.circle")
          ? Optional.of(Cause.of(Cause.Kind.CIRCLE, sentences.say(problem.said())))
          : Optional.empty();
    }
  }

  private Optional<Cause> unknownWord(CellContent.Fault error, Expression tree) {
    boolean named = ErrorKind.named(error.name()).filter(ErrorKind.NAME::equals).isPresent();
    return named
        ? Unknown.in(tree, cell, cells, catalogue)
            .filter(Unknown::isFunction)
            .map(this::ofFunction)
            .or(this::foreignDecimalSign)
        : Optional.empty();
  }

  private Cause ofFunction(Unknown function) {
    String sentence =
        function
            .meant()
            .map(meant -> sentences.say("why.function.meant", function.word(), meant))
            .orElseGet(() -> sentences.say("why.function", function.word()));
    return Cause.of(Cause.Kind.FUNCTION, sentence);
  }

  /**
   * An office with a decimal comma takes 2.5 for a name; among the numbers of the formula, which
   * all have points here, is such a one, since every name and function is known.
   */
  private Optional<Cause> foreignDecimalSign() {
    return sentences.decimalSign() == DecimalSign.COMMA && DECIMAL.matcher(text).find()
        ? Optional.of(Cause.of(Cause.Kind.DECIMAL, sentences.say("why.point")))
        : Optional.empty();
  }

  private Cause unexplained(CellContent.Fault error, List<String> notComputable) {
    String meaning =
        ErrorKind.named(error.name())
            .map(kind -> kind.meaning(sentences))
            .orElseGet(() -> sentences.say("error.other"));
    String where =
        notComputable.isEmpty()
            ? sentences.say("why.unexplained")
            : sentences.say("why.uncomputable", String.join(", ", notComputable));
    String name = sentences.say(new ErrorName(error.name()).shown());
    return Cause.of(
        Cause.Kind.UNKNOWN, sentences.say("why.error", cell.place(), name, meaning, where));
  }

  private List<String> words(Expression tree, Diagnosis diagnosis) {
    List<String> said = new ArrayList<>();
    said.add(sentences.say("cell.formula", cell.place(), diagnosis.words().of(tree)));
    names(tree).distinct().forEach(name -> meaning(name, diagnosis).ifPresent(said::add));
    calls(tree)
        .flatMap(call -> diagnosis.calculation().followed(call).stream())
        .distinct()
        .forEach(followed -> formula(followed, diagnosis.words()).ifPresent(said::add));
    FunctionTexts texts = FunctionTexts.in(sentences);
    for (Declaration function : functions(tree)) {
      said.add(sentences.say("titled", function.displayName(), texts.description(function)));
    }
    return said;
  }

  /** What a name stands for, if that can be read. */
  private Optional<String> meaning(Name name, Diagnosis diagnosis) {
    try {
      String meaning = diagnosis.words().of(diagnosis.calculation().meaning(name));
      return Optional.of(sentences.say("cell.name", name.name(), meaning));
    } catch (FormulaException unknown) {
      return Optional.empty();
    }
  }

  private static Stream<Name> names(Expression expression) {
    return expression instanceof Name name
        ? Stream.of(name)
        : expression.parts().stream().flatMap(FormulaCell::names);
  }

  /** What a cell does whose formula is followed, if it can be read. */
  private Optional<String> formula(CellAddress followed, Words words) {
    try {
      return cells.at(followed) instanceof CellContent.Formula formula
          ? Optional.of(
              sentences.say(
                  "cell.formula",
                  words.label(followed),
                  words.of(formulas.inCell(formula.text()).tree())))
          : Optional.empty();
    } catch (FormulaException unreadable) {
      return Optional.empty();
    }
  }

  private Optional<Contributions> contributions(Expression tree, Diagnosis diagnosis) {
    return calls(tree)
        .flatMap(
            call ->
                Contributions.of(call, diagnosis.calculation(), diagnosis.words(), sentences)
                    .stream())
        .findFirst();
  }

  private List<Declaration> functions(Expression tree) {
    return calls(tree)
        .flatMap(call -> catalogue.find(call.name()).stream())
        .map(WorksheetFunction::declaration)
        .distinct()
        .toList();
  }

  private static boolean dealsWithErrors(Formula formula) {
    return formula.functions().stream().anyMatch(DEALING_WITH_ERRORS::contains);
  }

  /** The calls of functions that the formula engine does not know, outer ones first. */
  private static Stream<ForeignCall> calls(Expression expression) {
    Stream<ForeignCall> inside = expression.parts().stream().flatMap(FormulaCell::calls);
    return expression instanceof ForeignCall call ? Stream.concat(Stream.of(call), inside) : inside;
  }
}
