package tenthmark.measurement.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/**
 * A worksheet function: what it is and how it is computed. A class that implements it and carries
 * {@code @AutoService(WorksheetFunction.class)} is all that a new function needs in this module.
 */
public interface WorksheetFunction {

  /** Everything said about the function. */
  Declaration declaration();

  /**
   * Computes the result from arguments read by parameter.
   *
   * @throws ArgumentException if an argument cannot be used
   */
  Value evaluate(Arguments arguments);

  /** Computes the result from values as cells hand them over, in English and by {@code bench}. */
  default Value call(List<Value> values) {
    return call(values, Sentences.english(), () -> Convention.BENCH);
  }

  /**
   * Computes the result from values as cells hand them over. A bad argument gives what a user then
   * sees: the sentence that explains it where the function gives a text or a table, and a fault
   * with that sentence as its reason where it gives a number.
   *
   * @param convention of the workbook, asked for only where an argument is left out or a word of it
   */
  default Value call(List<Value> values, Sentences sentences, Supplier<Convention> convention) {
    try {
      return compute(values, sentences, convention);
    } catch (ArgumentException problem) {
      return refused(sentence(problem, sentences));
    }
  }

  /** The sentence that explains why an argument is refused. */
  default String sentence(ArgumentException problem, Sentences sentences) {
    return sentences.say("titled", declaration().displayName(), sentences.say(problem.said()));
  }

  /** What a call gives whose argument is refused with a sentence. */
  default Value refused(String sentence) {
    return switch (declaration().result()) {
      case NUMBER, EITHER -> new Value.Fault(sentence);
      case TEXT -> Value.of(sentence);
      case TABLE -> explained(sentence);
    };
  }

  /**
   * Computes the result from values as cells hand them over.
   *
   * @throws ArgumentException if an argument cannot be used
   */
  default Value compute(List<Value> values, Sentences sentences, Supplier<Convention> convention) {
    Value result = evaluate(new Arguments(declaration(), values, sentences, convention));
    requireFinite(result);
    return result;
  }

  /**
   * What makes up the uncertainty that the function gives or is about, if it has contributions.
   *
   * @throws ArgumentException if an argument cannot be used
   */
  default Optional<Breakdown> breakdown(Arguments arguments) {
    return Optional.empty();
  }

  /**
   * What is very unlikely about arguments that can be computed with, such as two that have changed
   * places.
   *
   * @throws ArgumentException if an argument cannot be used
   */
  default Optional<Message> doubt(Arguments arguments) {
    return Optional.empty();
  }

  /** The same from values as cells hand them over. */
  default Optional<Message> doubt(
      List<Value> values, Sentences sentences, Supplier<Convention> convention) {
    return doubt(new Arguments(declaration(), values, sentences, convention));
  }

  /** The same from values as cells hand them over. */
  default Optional<Breakdown> breakdown(
      List<Value> values, Sentences sentences, Supplier<Convention> convention) {
    return breakdown(new Arguments(declaration(), values, sentences, convention));
  }

  private static void requireFinite(Value result) {
    if (result instanceof Value.Table table) {
      table.cells().forEach(WorksheetFunction::requireFinite);
    } else if (result instanceof Value.Numeric numeric && !Double.isFinite(numeric.number())) {
      throw ArgumentException.of("result.undefined");
    }
  }

  /** Two by two cells, so that an array formula does not repeat the sentence in every cell. */
  private static Value explained(String sentence) {
    Value rest = new Value.Fault("#N/A");
    return new Value.Table(List.of(List.of(Value.of(sentence), rest), List.of(rest, rest)));
  }
}
