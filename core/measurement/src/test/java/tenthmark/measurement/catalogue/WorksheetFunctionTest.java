package tenthmark.measurement.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WorksheetFunctionTest {

  private static final Parameter<Double> WIDTH =
      Parameter.required("width", "Width of the grip.", Kinds.number());
  private static final Parameter<Double> DEPTH =
      Parameter.optional("depth", "Depth of the grip. 1 if left out.", Kinds.number(), 1.0);
  private static final Parameter<Double> EACH =
      Parameter.repeated("each", "Length of each spoke.", Kinds.number());

  @Nested
  class Calling {

    @Test
    void takeTheDefaultWhenLeftOutOrBlank() {
      WorksheetFunction sum =
          function(
              arguments -> Value.of(arguments.get(WIDTH) + arguments.get(DEPTH)), WIDTH, DEPTH);
      assertThat(sum.call(List.of(Value.of(2)))).isEqualTo(Value.of(3));
      assertThat(sum.call(List.of(Value.of(2), Value.BLANK))).isEqualTo(Value.of(3));
      assertThat(sum.call(List.of(Value.of(2), oneCell(Value.BLANK)))).isEqualTo(Value.of(3));
      assertThat(sum.call(List.of(oneCell(Value.of(2)), Value.of(5)))).isEqualTo(Value.of(7));
    }

    @Test
    void areNotTooFewOrTooMany() {
      WorksheetFunction width = function(arguments -> Value.of(arguments.get(WIDTH)), WIDTH);
      assertThat(width.call(List.of()))
          .isEqualTo(new Value.Fault("LAB_GRIP: width is blank; it must be a number."));
      assertThat(width.call(List.of(Value.of(1), Value.of(2))))
          .isEqualTo(new Value.Fault("LAB_GRIP: there are 2 arguments; at most 1 are taken."));
    }

    @Test
    void repeatWithoutBlankOnes() {
      WorksheetFunction count =
          function(arguments -> Value.of(arguments.all(EACH).size()), WIDTH, EACH);
      assertThat(count.call(List.of(Value.of(1), Value.of(1), Value.BLANK, Value.of(3))))
          .isEqualTo(Value.of(2));
      assertThat(count.call(List.of(Value.of(1))))
          .isEqualTo(new Value.Fault("LAB_GRIP: each is blank; it must be a number."));
    }

    @Test
    void areDeclared() {
      WorksheetFunction wrong = function(arguments -> Value.of(arguments.get(DEPTH)), WIDTH);
      assertThatIllegalStateException().isThrownBy(() -> wrong.call(List.of(Value.of(1))));
    }
  }

  @Nested
  class BadArguments {

    private static final String SENTENCE =
        "LAB_GRIP: width is the text \"wide\"; it must be a number.";

    @ParameterizedTest
    @EnumSource(names = {"NUMBER", "EITHER"})
    void giveAFaultWhereANumberBelongs(ResultKind kind) {
      assertThat(called(kind)).isEqualTo(new Value.Fault(SENTENCE));
    }

    @Test
    void giveTheSentenceWhereATextBelongs() {
      assertThat(called(ResultKind.TEXT)).isEqualTo(Value.of(SENTENCE));
    }

    @Test
    void giveTheSentenceInTheFirstCellOfATable() {
      Value.Table table = (Value.Table) called(ResultKind.TABLE);
      assertThat(table.cells().get(0)).isEqualTo(Value.of(SENTENCE));
      assertThat(table.cells().subList(1, 4)).containsOnly(new Value.Fault("#N/A"));
    }

    private static Value called(ResultKind kind) {
      return function(kind, arguments -> Value.of(arguments.get(WIDTH)), WIDTH)
          .call(List.of(Value.of("wide")));
    }
  }

  @Nested
  class Results {

    @Test
    void areNeverInfiniteOrUndefined() {
      Value.Fault fault =
          new Value.Fault(
              "LAB_GRIP: the result is too large or not defined; check the size of the arguments.");
      assertThat(function(arguments -> Value.of(Double.NaN)).call(List.of())).isEqualTo(fault);
      assertThat(function(arguments -> oneCell(Value.of(Double.NEGATIVE_INFINITY))).call(List.of()))
          .isEqualTo(fault);
    }
  }

  private static Value oneCell(Value cell) {
    return new Value.Table(List.of(List.of(cell)));
  }

  private static WorksheetFunction function(
      Function<Arguments, Value> evaluation, Parameter<?>... parameters) {
    return function(ResultKind.NUMBER, evaluation, parameters);
  }

  private static WorksheetFunction function(
      ResultKind kind, Function<Arguments, Value> evaluation, Parameter<?>... parameters) {
    Declaration declaration =
        new Declaration(
            "GRIP",
            Family.RECORDING,
            FunctionRole.OTHER,
            kind,
            "Gives a number.",
            "When a number is needed.",
            List.of(parameters),
            "width",
            "common practice, no source",
            Example.of("=LAB_GRIP(1)", "1"));
    return new WorksheetFunction() {
      @Override
      public Declaration declaration() {
        return declaration;
      }

      @Override
      public Value evaluate(Arguments arguments) {
        return evaluation.apply(arguments);
      }
    };
  }
}
