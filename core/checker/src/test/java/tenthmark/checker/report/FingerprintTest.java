package tenthmark.checker.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.checker.grade.Grade;
import tenthmark.checker.grade.GradeTableColumns;
import tenthmark.checker.roster.Attempt;
import tenthmark.checker.roster.Participant;
import tenthmark.checker.roster.Student;
import tenthmark.checker.submission.Label;

/** Students are invented. */
class FingerprintTest {

  private record Pair(Object one, Object other) {}

  static List<Pair> differentValues() {
    return List.of(
        new Pair(1, 2),
        new Pair(1, "1"),
        new Pair(new BigDecimal("1.0"), new BigDecimal("1")),
        new Pair(List.of("ab", "c"), List.of("a", "bc")),
        new Pair(List.of("a", List.of("b")), List.of("a", "b")),
        new Pair(List.of("a", "b"), List.of("b", "a")),
        new Pair(Optional.empty(), Optional.of("")),
        new Pair(Map.of("a", "b"), Map.of("b", "a")),
        new Pair(new Student("1", "Ada", ""), new Student("1", "", "Ada")));
  }

  @ParameterizedTest
  @MethodSource("differentValues")
  void differentValuesHaveDifferentOnes(Pair pair) {
    assertThat(Fingerprint.of(pair.one())).isNotEqualTo(Fingerprint.of(pair.other()));
  }

  @Test
  void setsAndMapsHaveNoOrder() {
    Map<String, Integer> map = new LinkedHashMap<>(Map.of("b", 2));
    map.put("a", 1);

    assertThat(Fingerprint.of(map)).isEqualTo(Fingerprint.of(Map.of("a", 1, "b", 2)));
    assertThat(Fingerprint.of(new LinkedHashSet<>(List.of("b", "a"))))
        .isEqualTo(Fingerprint.of(Set.of("a", "b")));
  }

  @Test
  void whatItDoesNotKnowIsRefused() {
    assertThatThrownBy(() -> Fingerprint.of(new Object()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void gradesHaveOne() {
    Label label =
        new Label(
            Optional.of("7"),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.of(1),
            Optional.of(LocalDateTime.of(2026, 9, 14, 10, 33)));
    Participant ada =
        new Participant(
            new Student("7", "Ada", "A"),
            true,
            List.of(new Attempt(Path.of("ada.xlsx"), label)),
            List.of());
    Grade grade = Grade.of(ada, Map.of(), List.of(), GradeTableColumns.STANDARD);

    assertThat(Fingerprint.of(grade)).isEqualTo(Fingerprint.of(grade));
  }
}
