package tenthmark.measurement.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** LAB_WHY on a bad argument for each parameter of each function, new ones included. */
class BadArgumentsTest {

  @ParameterizedTest
  @MethodSource
  void areNamedWithTheirParameter(BadArgument bad) {
    assertThat(bad.sentence()).as(bad.formula()).matches(bad::namesTheParameter).endsWith(".");
  }

  static Stream<BadArgument> areNamedWithTheirParameter() {
    return BadArgument.ofEveryParameter();
  }
}
