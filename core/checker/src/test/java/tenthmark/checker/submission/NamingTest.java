package tenthmark.checker.submission;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Students and numbers are invented. */
class NamingTest {

  private static final Naming UNDERSCORES = Naming.presets().get("underscore-separated");
  private static final Naming FOLDERS = Naming.presets().get("folder-per-student");

  @Nested
  class SeparatedByUnderscores {

    @ParameterizedTest
    @CsvSource({
      "Doe_Jane_12345_attempt_2026-09-14-10-33-05_Lab 3 (final)(2).xlsx,"
          + " 12345, Jane Doe, 2026-09-14T10:33:05",
      "Doe_Jane_12345_attempt_2026-09-14-10-33-05.xlsx, 12345, Jane Doe,",
      "De_La_Cruz_Ana_a0777_20260914_lab.ods, a0777, La Cruz Ana De, 2026-09-14T00:00",
      "Brook_Ada_10001_lab_3.ods, 10001, Ada Brook,",
      "Ünal_Şule_10002_x.ods, 10002, Şule Ünal,",
    })
    void tellStudentAndTime(String name, String id, String student, LocalDateTime time) {
      Label label = UNDERSCORES.read(Path.of(name), 0);

      assertThat(label.id()).contains(id);
      assertThat(label.name()).contains(student);
      assertThat(label.time()).isEqualTo(Optional.ofNullable(time));
    }

    @ParameterizedTest
    @CsvSource({
      "handed-in/section-1.zip/Doe_Jane_12345_lab.xlsx, 2",
      "handed-in/section 1/Doe_Jane_12345_lab.xlsx, 1",
      "handed-in/section-1.zip/Doe_Jane_12345_lab/data/my_lab_7_new.xlsx, 2",
      "Doe_Jane_12345_lab.zip/lab.xlsx, 1",
      "C.H/Doe_Jane_12345_lab.v2.xlsx, 1"
    })
    void areFoundInArchivesAndNestedFolders(String path, int base) {
      assertThat(UNDERSCORES.read(Path.of(path), base).id()).contains("12345");
    }

    @ParameterizedTest
    @CsvSource({"lab.xlsx", "Doe_Jane_lab.xlsx", "Doe-Jane-12345.xlsx"})
    void tellNothingWhereANameIsMadeUpOtherwise(String name) {
      assertThat(UNDERSCORES.read(Path.of(name), 0)).isEqualTo(Label.NONE);
    }
  }

  @Nested
  class AFolderForEachStudent {

    @ParameterizedTest
    @CsvSource({
      "in/Doe_Jane_12345/lab.xlsx, 1, Jane Doe, 12345",
      "in/Jane Doe_12345/lab.xlsx, 1, Jane Doe, 12345",
      "in/Jane Doe (12345)/deep/er/lab.xlsx, 1, Jane Doe, 12345",
      "in/12345/lab.xlsx, 1, , 12345",
      "in/s1.zip/Jane Doe/old/lab.xlsx, 2, Jane Doe,",
    })
    void isTheFirstBelowWhatWasGiven(String path, int base, String student, String id) {
      Label label = FOLDERS.read(Path.of(path), base);

      assertThat(label.name()).isEqualTo(Optional.ofNullable(student));
      assertThat(label.id()).isEqualTo(Optional.ofNullable(id));
    }
  }

  @Nested
  class OwnPatterns {

    @Test
    void takeTheSectionFromTheArchive() {
      Naming own = Naming.of("{section}/{id}-{attempt}-{any}");

      Label label = own.read(Path.of("in", "Tuesday early.zip", "b77-2-lab.ods"), 2);

      assertThat(label.section()).contains("Tuesday early");
      assertThat(label.id()).contains("b77");
      assertThat(label.attempt()).hasValue(2);
    }

    @Test
    void areTriedInTheirOrder() {
      Naming own = Naming.of("{id}_{any}", "{name}_{any}");

      assertThat(own.read(Path.of("b77_lab.ods"), 0).id()).contains("b77");
      assertThat(own.read(Path.of("Jane Doe_lab.ods"), 0).name()).contains("Jane Doe");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "{id}{name}      | nothing stands between two parts",
          "{id}_{id}       | {id} stands there twice",
          "{any}_{time}    | it tells no student: {id}, {name} or {last} is missing",
          "{student}_{any} | {student} is no part of a name; parts are {id}, {name}, {first},"
              + " {last}, {section}, {attempt}, {time}, {any}",
          "{id             | { is no part of a name; parts are {id}, {name}, {first}, {last},"
              + " {section}, {attempt}, {time}, {any}"
        })
    void areRefusedWithTheReason(String pattern, String reason) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> PathPattern.of(pattern))
          .withMessage(reason);
    }
  }

  @ParameterizedTest
  @CsvSource({"2026-02-30-10-00-00", "2026-13-01", "2026-09-14-25-00-00", "123456789"})
  void whatIsNoTimeIsNone(String text) {
    assertThat(HandInTime.read(text)).isEmpty();
  }

  /** Each try anew would take a time that doubles with each sign. */
  @Test
  @Timeout(20)
  void aHostileNameTakesNoTime() {
    Naming greedy = Naming.of("{last}_{first}_{name}_{section}_{any}_{any}_{id}");

    assertThat(greedy.read(Path.of("_a".repeat(120) + "_!"), 0)).isEqualTo(Label.NONE);
  }

  @Test
  void laterAttemptsComeLater() {
    assertThat(Label.EARLIER.compare(label("20260914T0900"), label("20260914T1000"))).isNegative();
    assertThat(Label.EARLIER.compare(label("20260914"), label("20260914"))).isZero();
  }

  private static Label label(String time) {
    return Naming.of("{id}_{time}").read(Path.of("b1_" + time + ".ods"), 0);
  }
}
