package tenthmark.checker.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesTest {

  @ParameterizedTest
  @CsvSource({
    "Density (liquid), Density (liquid), true",
    "Density (liquid), density  [liquid], true",
    "Density (liquid), Density (solid), false",
    "Density (liquid), Density, false",
    "Density, Density (liquid), true",
    "Length [far end], Length (far end), true",
    "Crank arm, Crank arm (mm), true"
  })
  void includeANameWithItsOwnBrackets(String name, String text, boolean included) {
    assertThat(Names.of(name, List.of()).include(text)).isEqualTo(included);
  }
}
