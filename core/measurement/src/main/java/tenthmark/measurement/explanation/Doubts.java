package tenthmark.measurement.explanation;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.Compared;
import tenthmark.measurement.formula.Expression.Constant;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Joined;
import tenthmark.measurement.formula.Expression.Reference;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Operand;
import tenthmark.measurement.wording.Sentences;

/**
 * What is very unlikely about a formula that has a value: a blank cell that counts as 0 where a LAB
 * function takes a number, what the function itself doubts, and a number typed as text, which the
 * office's own functions pass over.
 */
record Doubts(Calculation calculation, Words words, Sentences sentences) {

  /** From so many rows on a range is a whole column: no table has as many. */
  private static final int WHOLE = 500_000;

  /** The first doubt about a call. */
  Optional<Cause> about(ForeignCall call) {
    return calculation.function(call).flatMap(function -> about(call, function));
  }

  /** The first text that looks like a number in what the office's own functions are given. */
  Optional<Cause> textualNumber(Expression expression) {
    if (expression instanceof Reference reference) {
      return textualNumber(reference);
    }
    if (expression instanceof ForeignCall) {
      // A LAB function says itself what it does not take.
      return Optional.empty();
    }
    boolean takesTexts = expression instanceof Compared || expression instanceof Joined;
    return expression.parts().stream()
        .filter(part -> !takesTexts || !(part instanceof Reference))
        .flatMap(part -> textualNumber(part).stream())
        .findFirst();
  }

  private Optional<Cause> textualNumber(Reference reference) {
    try {
      CellRange range = calculation.rangeOf(reference);
      List<List<CellContent>> rows = calculation.contents(range);
      return IntStream.range(0, rows.size())
          .boxed()
          .flatMap(row -> textualNumber(range, row, rows.get(row)))
          .findFirst();
    } catch (FormulaException | NotComputableException unknown) {
      // The diagnosis says what is wrong with the reference.
      return Optional.empty();
    }
  }

  private Stream<Cause> textualNumber(CellRange range, int row, List<CellContent> contents) {
    return IntStream.range(0, contents.size())
        .filter(column -> contents.get(column) instanceof CellContent.Text)
        .boxed()
        .flatMap(
            column ->
                Cause.ofTextualNumber(
                    words.cell(
                        new CellAddress(range.sheet(), range.left() + column, range.top() + row)),
                    ((CellContent.Text) contents.get(column)).text(),
                    sentences)
                    .stream());
  }

  private Optional<Cause> about(ForeignCall call, WorksheetFunction function) {
    try {
      return Stream.of(
              blank(call, function).map(said -> cause(Cause.Kind.BLANK, said, function)),
              Stream.concat(doubted(call, function), numberForText(call, function))
                  .map(said -> said + new SplitNumbers(calculation, sentences).hint(call))
                  .map(said -> cause(Cause.Kind.UNLIKELY, said, function)),
              whole(call, function).map(said -> cause(Cause.Kind.WHOLE, said, function)))
          .flatMap(doubts -> doubts)
          .findFirst();
    } catch (ArgumentException | FormulaException | NotComputableException unknown) {
      // The diagnosis says what is wrong; a doubt is about what can be computed.
      return Optional.empty();
    }
  }

  /** A whole column that a LAB function is given, which the office may fail to hand over. */
  Optional<Cause> wholeColumn(ForeignCall call) {
    return calculation
        .function(call)
        .flatMap(
            function ->
                whole(call, function)
                    .findFirst()
                    .map(said -> cause(Cause.Kind.WHOLE, said, function)));
  }

  private Stream<String> whole(ForeignCall call, WorksheetFunction function) {
    List<Expression> arguments = call.arguments();
    return IntStream.range(0, arguments.size())
        .filter(index -> !Calculation.takesCells(function, index))
        .filter(index -> isWholeColumn(arguments.get(index)))
        .boxed()
        .flatMap(index -> Calculation.parameter(function, index).stream())
        .map(parameter -> sentences.say("why.whole", parameter.name()));
  }

  private boolean isWholeColumn(Expression argument) {
    try {
      return argument instanceof Reference reference
          && calculation.rangeOf(reference).height() >= WHOLE;
    } catch (FormulaException unknown) {
      // The diagnosis says what is wrong with the reference.
      return false;
    }
  }

  private Stream<String> doubted(ForeignCall call, WorksheetFunction function) {
    return function
        .doubt(calculation.arguments(function, call), sentences, calculation::convention)
        .map(doubt -> sentences.say(doubt))
        .stream();
  }

  private Stream<String> blank(ForeignCall call, WorksheetFunction function) {
    List<Expression> arguments = call.arguments();
    return IntStream.range(0, arguments.size())
        .filter(index -> !Calculation.takesCells(function, index))
        .filter(index -> isBlank(arguments.get(index)))
        .boxed()
        .flatMap(index -> blank(Calculation.parameter(function, index), arguments.get(index)));
  }

  private Stream<String> numberForText(ForeignCall call, WorksheetFunction function) {
    return numbersForTexts(call, function)
        .mapToObj(
            index ->
                sentences.say(
                    "why.number.for.text",
                    Calculation.parameter(function, index).orElseThrow().name(),
                    words.of(call.arguments().get(index))));
  }

  /** The places of arguments that are typed numbers where a text belongs. */
  static IntStream numbersForTexts(ForeignCall call, WorksheetFunction function) {
    return IntStream.range(0, call.arguments().size())
        .filter(index -> call.arguments().get(index) instanceof Constant)
        .filter(
            index ->
                Calculation.parameter(function, index)
                    .filter(parameter -> parameter.form() == Kind.Form.TEXT)
                    .isPresent());
  }

  private Stream<String> blank(Optional<Parameter<?>> parameter, Expression argument) {
    return parameter
        .filter(known -> !known.mayBeBlank())
        .map(known -> sentences.say("why.from.blank", known.name(), words.of(argument)))
        .stream();
  }

  private boolean isBlank(Expression argument) {
    return argument instanceof CellReference
        && calculation.value(argument) instanceof Operand.Blank;
  }

  private Cause cause(Cause.Kind kind, String sentence, WorksheetFunction function) {
    Declaration declaration = function.declaration();
    return new Cause(
        kind,
        sentences.say("titled", declaration.displayName(), sentence),
        Optional.of(declaration));
  }
}
