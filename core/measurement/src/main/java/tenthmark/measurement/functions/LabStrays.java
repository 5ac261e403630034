package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tenthmark.measurement.catalogue.Argument;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.repeats.Repeats;
import tenthmark.measurement.repeats.Side;
import tenthmark.measurement.repeats.StrayTest;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** LAB_STRAYS: which of several repeated readings are suspect. */
@AutoService(WorksheetFunction.class)
public final class LabStrays implements WorksheetFunction {

  private static final int FEWEST = 3;

  private static final Message ALLOWED =
      Message.of("allowed.strays.limit", 1, new Message.Figure("0.1"), 50);

  /** A score that is typed; a level of significance is a text with its sign. */
  private static final Kind<Double> SCORE = Kinds.numberThat(ALLOWED, score -> score >= 1);

  private static final Kind<Double> LEVEL =
      Kinds.percent(ALLOWED, number -> false, percent -> percent >= 0.1 && percent <= 50);

  /** From where on a score is suspect. */
  private sealed interface Limit {

    /** A score as it is. */
    record OfScore(double score) implements Limit {}

    /** The level of significance of a test, as a fraction. */
    record OfLevel(double level) implements Limit {}
  }

  private static final Parameter<List<OptionalDouble>> VALUES =
      Parameter.required(
          "values",
          "Repeated readings of one quantity, at least 3. A blank cell keeps its row.",
          Kinds.column(Kinds.number()));

  private static final Parameter<StrayTest> TEST =
      Parameter.optional(
          "test",
          "Grubbs or chauvenet. Grubbs if left out.",
          Kinds.choice(StrayTest.class),
          StrayTest.GRUBBS);

  private static final Parameter<Limit> LIMIT =
      Parameter.optional(
          "limit",
          "The score above which a reading is suspect, from 1 on; or the level of Grubbs' test as a"
              + " text such as \"1 %\". 5 % if left out.",
          new Kind<>(Kind.Form.SINGLE, ALLOWED, LabStrays::limitIn));

  private static final Parameter<Side> SIDE =
      Parameter.optional(
          "side",
          "Which readings may be suspect: both, low (below the mean) or high. Both if left out.",
          Kinds.choice(Side.class),
          Side.BOTH);

  private static final Declaration DECLARATION =
      new Declaration(
          "STRAYS",
          Family.REPEATS,
          FunctionRole.STATISTIC,
          ResultKind.TABLE,
          "Gives each reading's distance from the mean in standard deviations, and whether it is"
              + " suspect.",
          "Before a reading is left out, and never as the only reason for it.",
          List.of(VALUES, TEST, LIMIT, SIDE),
          "score = |value - mean|/s, with s the standard deviation of all n values (n - 1); suspect"
              + " if the score is above the limit. grubbs: (n-1)/sqrt(n) sqrt(t²/(n-2+t²)), t"
              + " Student's quantile with n-2 degrees of freedom that leaves level/(2n) above it;"
              + " chauvenet: the normal quantile at 1 - 0.5/(2n); for one side twice that."
              + " One row per cell, in their order."
              + " Suspect means: look for the cause in the notes; it is no leave to delete.",
          "F. E. Grubbs, Technometrics 11 (1969) 1, and ASTM E178; Chauvenet (1863), common"
              + " practice in teaching laboratories",
          Example.of(
              "=LAB_STRAYS(A1:A6)",
              List.of(
                  List.of(2.31),
                  List.of(2.34),
                  List.of(2.29),
                  List.of(2.33),
                  List.of(2.71),
                  List.of(2.30)),
              "0.4302"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    List<OptionalDouble> cells = arguments.get(VALUES);
    Repeats repeats =
        new Repeats(
            new CompleteRows()
                .with(VALUES.name(), cells).atLeast(FEWEST, "strays").stream()
                    .map(row -> row[0])
                    .toList());
    double limit = limit(arguments, repeats.count());
    Side side = arguments.get(SIDE);
    Iterator<Double> scores = repeats.scores().iterator();
    return new Value.Table(
        cells.stream()
            .map(
                cell ->
                    cell.isPresent()
                        ? scored(scores.next(), limit, side, arguments.sentences())
                        : EMPTY)
            .toList());
  }

  private static final List<Value> EMPTY = List.of(Value.BLANK, Value.BLANK);

  private static Limit limitIn(Argument argument) {
    return argument.value() instanceof Value.Text
        ? new Limit.OfLevel(LEVEL.read(argument) / 100)
        : new Limit.OfScore(SCORE.read(argument));
  }

  private static double limit(Arguments arguments, int count) {
    StrayTest test = arguments.get(TEST);
    Optional<Limit> given = arguments.find(LIMIT);
    if (given.isPresent() && given.get() instanceof Limit.OfScore limit) {
      return limit.score();
    }
    if (given.isPresent() && test == StrayTest.CHAUVENET) {
      throw ArgumentException.of("strays.level");
    }
    double level =
        given.isPresent() && given.get() instanceof Limit.OfLevel limit
            ? limit.level()
            : test.usualLevel();
    return test.limit(count, level, arguments.get(SIDE));
  }

  private static List<Value> scored(double score, double limit, Side side, Sentences sentences) {
    boolean suspect = side.holds(score) && Math.abs(score) > limit;
    return List.of(
        Value.of(Math.abs(score)), Value.of(sentences.say(suspect ? "word.suspect" : "word.ok")));
  }
}
