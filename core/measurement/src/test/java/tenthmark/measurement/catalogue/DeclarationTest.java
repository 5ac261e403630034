package tenthmark.measurement.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeclarationTest {

  private static final Parameter<Double> WIDTH =
      Parameter.required("width", "Width of the grip.", Kinds.number());
  private static final Parameter<Double> DEPTH =
      Parameter.optional("depth", "Depth of the grip. 1 if left out.", Kinds.number(), 1.0);
  private static final Parameter<Double> EACH =
      Parameter.repeated("each", "Length of each spoke.", Kinds.number());

  @Nested
  class Names {

    @Test
    void followFromOneWord() {
      Declaration grip = declaration("GRIP", WIDTH, DEPTH);
      assertThat(grip.displayName()).isEqualTo("LAB_GRIP");
      assertThat(grip.storedName()).isEqualTo("TENTHMARK.LAB.GRIP");
      assertThat(grip.methodName()).isEqualTo("grip");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "grip", "GRIP_2", "GRIP.A"})
    void areUpperCaseLetters(String name) {
      assertThatIllegalArgumentException().isThrownBy(() -> declaration(name));
    }
  }

  @Nested
  class Signature {

    @Test
    void bracketsWhatIsOptionalAndDotsWhatIsRepeated() {
      assertThat(declaration("GRIP", WIDTH, DEPTH).signature())
          .isEqualTo("LAB_GRIP(width; [depth])");
      assertThat(declaration("GRIP", WIDTH, EACH).signature())
          .isEqualTo("LAB_GRIP(width; each; ...)");
      assertThat(declaration("GRIP").signature()).isEqualTo("LAB_GRIP()");
    }
  }

  @Nested
  class Parameters {

    @Test
    void putOptionalOnesLast() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> declaration("GRIP", DEPTH, WIDTH))
          .withMessage("GRIP: width follows an optional one");
    }

    @Test
    void putARepeatedOneLast() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> declaration("GRIP", EACH, WIDTH))
          .withMessage("GRIP: each is not the last");
    }

    @Test
    void differInName() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> declaration("GRIP", WIDTH, WIDTH))
          .withMessage("GRIP: two parameters have one name");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Width", "grip width", "1st"})
    void areNamedByOneLowerCaseWord(String name) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Parameter.required(name, "Some width.", Kinds.number()));
    }
  }

  private static Declaration declaration(String name, Parameter<?>... parameters) {
    return new Declaration(
        name,
        Family.RECORDING,
        FunctionRole.OTHER,
        ResultKind.NUMBER,
        "Gives a number.",
        "When a number is needed.",
        List.of(parameters),
        "width",
        "common practice, no source",
        Example.of("=LAB_" + name + "(1)", "1"));
  }
}
