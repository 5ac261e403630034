package tenthmark.measurement.explanation;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Operand;
import tenthmark.measurement.wording.Sentences;

/**
 * What is very unlikely about a call of a LAB function that has a value: a blank cell that counts
 * as 0 where a number belongs, and what the function itself doubts.
 */
record Doubts(Calculation calculation, Words words, Sentences sentences) {

  /** The first doubt about a call. */
  Optional<Cause> about(ForeignCall call) {
    return calculation.function(call).flatMap(function -> about(call, function));
  }

  private Optional<Cause> about(ForeignCall call, WorksheetFunction function) {
    try {
      return Stream.concat(blank(call, function), doubted(call, function))
          .findFirst()
          .map(sentence -> cause(sentence, function.declaration()));
    } catch (ArgumentException | FormulaException | NotComputableException unknown) {
      // The diagnosis says what is wrong; a doubt is about what can be computed.
      return Optional.empty();
    }
  }

  private Stream<String> doubted(ForeignCall call, WorksheetFunction function) {
    return function
        .doubt(calculation.arguments(function, call), sentences)
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

  private Cause cause(String sentence, Declaration function) {
    return new Cause(
        Cause.Kind.UNLIKELY,
        sentences.say("titled", function.displayName(), sentence),
        Optional.of(function));
  }
}
