package tenthmark.checker.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tenthmark.checker.submission.Naming;

/** Students are invented. */
class RegisterTest {

  private static final Naming NAMING = Naming.presets().get("underscore-separated");

  private static final Roster ROSTER =
      new Roster(
          List.of(
              new Student("10001", "Ada Brook", "Tue"),
              new Student("10002", "Ben Castle", "Tue"),
              new Student("10003", "Cleo Dunn", "Wed")));

  private static List<Attempt> files(String... names) {
    return Stream.of(names)
        .map(Path::of)
        .map(file -> new Attempt(file, NAMING.read(file, 0)))
        .toList();
  }

  private static Register register(List<Attempt> workbooks, List<Attempt> strays) {
    return Register.of(Optional.of(ROSTER), workbooks, strays);
  }

  private static Participant participant(Register register, String id) {
    return register.participants().stream()
        .filter(one -> one.student().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theNewestAttemptCountsWhateverTheOrderOfTheFiles() {
    Participant ada =
        participant(
            register(
                files(
                    "Brook_Ada_10001_attempt_2026-09-15-08-00-00_b.ods",
                    "Brook_Ada_10001_attempt_2026-09-14-10-33-05_z.ods"),
                List.of()),
            "10001");

    assertThat(ada.newest().orElseThrow().file())
        .hasToString("Brook_Ada_10001_attempt_2026-09-15-08-00-00_b.ods");
    assertThat(ada.before().orElseThrow().file())
        .hasToString("Brook_Ada_10001_attempt_2026-09-14-10-33-05_z.ods");
  }

  @Test
  void noneOfSeveralAtOnceCounts() {
    Participant ada =
        participant(
            register(files("Brook_Ada_10001_a.ods", "Brook_Ada_10001_b.ods"), List.of()), "10001");

    assertThat(ada.newest()).isEmpty();
    assertThat(ada.severalAtOnce()).isTrue();
  }

  @Test
  void absenteesAndThoseWhoSentNoWorkbookAreNamed() {
    Register register = register(files("Brook_Ada_10001_a.ods"), files("Castle_Ben_10002_lab.pdf"));

    assertThat(register.absent())
        .extracting(one -> one.student().name())
        .containsExactly("Ben Castle", "Cleo Dunn");
    assertThat(participant(register, "10002").strays()).hasSize(1);
  }

  @Test
  void whoIsNotOnTheRosterComesAfterwards() {
    Register register =
        register(files("Frost_Dina_99999_a.ods", "lab.ods", "Brook_Ada_10001_a.ods"), List.of());

    assertThat(register.participants())
        .extracting(one -> one.student().shown() + (one.listed() ? "" : ", unknown"))
        .containsExactly(
            "Ada Brook (10001)",
            "Ben Castle (10002)",
            "Cleo Dunn (10003)",
            "Dina Frost (99999), unknown",
            "lab.ods, unknown");
  }

  @Test
  void withoutARosterPathsNameTheStudents() {
    Register register =
        Register.of(
            Optional.empty(),
            files(
                "Brook_Ada_10001_20260914_a.ods",
                "Brook_Ada_10001_20260915_b.ods",
                "a/x.ods",
                "b/x.ods"),
            files("readme.md"));

    assertThat(register.participants())
        .extracting(one -> one.student().shown() + " " + one.attempts().size())
        .containsExactly(
            "Ada Brook (10001) 2", Path.of("a/x.ods") + " 1", Path.of("b/x.ods") + " 1");
  }
}
