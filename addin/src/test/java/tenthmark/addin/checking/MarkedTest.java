package tenthmark.addin.checking;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkedTest {

  private final String comment = Marked.of("error: no unit.\nExpected: a unit such as mm.");

  @Test
  void tellsOurCommentEvenIfAProgramSetItsLinesOtherwise() {
    assertThat(Marked.isOurs(comment)).isTrue();
    assertThat(Marked.isOurs(comment.replace("\n", "\r\n") + "\n")).isTrue();
    assertThat(Marked.isChanged(comment)).isFalse();
  }

  @Test
  void tellsOneThatSomebodyHasChanged() {
    String changed = comment.replace("mm", "cm");
    assertThat(Marked.isOurs(changed)).isFalse();
    assertThat(Marked.isChanged(changed)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "my note", "Tenthmark checker is right", "[1a2b3c4d]\nnote"})
  void neverClaimsACommentOfAnother(String other) {
    assertThat(Marked.isOurs(other)).isFalse();
    assertThat(Marked.isChanged(other)).isFalse();
  }
}
