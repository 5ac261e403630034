package tenthmark.measurement.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.Supplier;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.recording.Convention;

class ParameterTest {

  private enum Choice {
    FIRST,
    SECOND
  }

  private static Convention bench() {
    return Convention.BENCH;
  }

  /** Calc passes 0 for a blank cell that stands alone; measured in tenthmark.addin. */
  @Nested
  class AZeroFromCalc {

    @Test
    void isBlankWhereATextBelongs() {
      Parameter<String> unit = Parameter.optional("unit", "Unit.", Kinds.text(), "none");
      Parameter<Choice> choice =
          Parameter.optional("choice", "One.", Kinds.choice(Choice.class), Choice.SECOND);
      assertThat(unit.read(Value.of(0), ParameterTest::bench)).contains("none");
      assertThat(choice.read(Value.of(0), ParameterTest::bench)).contains(Choice.SECOND);
    }

    @Test
    void isRefusedAsBlankWhereATextIsRequired() {
      Parameter<String> text = Parameter.required("text", "Text.", Kinds.text());
      assertThatThrownBy(() -> text.read(Value.of(0), ParameterTest::bench))
          .isInstanceOf(ArgumentException.class)
          .hasMessage("text is blank; it must be a text.");
    }

    @Test
    void staysANumberWhereANumberBelongs() {
      Parameter<Double> value = Parameter.optional("value", "Value.", Kinds.number(), 7.0);
      assertThat(value.read(Value.of(0), ParameterTest::bench)).contains(0.0);
    }
  }

  @Nested
  class OfAConvention {

    private final Parameter<Double> reaction =
        Parameter.byConvention(
            "reaction", "Reaction.", Kinds.positive(), Convention::reactionSeconds);

    @Test
    void takesTheWorkbooksValueWhereItIsLeftOut() {
      assertThat(reaction.read(Value.BLANK, ParameterTest::bench)).contains(0.2);
    }

    @Test
    void doesNotAskTheWorkbookForWhatIsGiven() {
      Supplier<Convention> unreadable =
          () -> {
            throw new AssertionError("asked");
          };

      assertThat(reaction.read(Value.of(0.3), unreadable)).contains(0.3);
    }
  }
}
