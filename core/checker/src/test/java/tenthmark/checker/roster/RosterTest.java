package tenthmark.checker.roster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.submission.Label;
import tenthmark.checker.submission.Naming;

/** Students are invented. */
class RosterTest {

  private static final RosterColumns OWN =
      new RosterColumns(List.of("Number"), List.of("First", "Last"), List.of("Group"));

  @TempDir Path folder;

  private Roster roster(String text, Charset charset, RosterColumns columns) throws IOException {
    Path file = folder.resolve("roster.csv");
    Files.write(file, text.getBytes(charset));
    return Roster.read(file, columns);
  }

  private Roster roster(String text) throws IOException {
    return roster(text, StandardCharsets.UTF_8, RosterColumns.STANDARD);
  }

  @Nested
  class ATable {

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void isReadWithWhateverStandsBetweenItsValues(String between) throws IOException {
      String text = "Last,First,Number,Group\r\nBrook,Ada,10001,Tue\r\n".replace(",", between);

      assertThat(roster(text, StandardCharsets.UTF_8, OWN).students())
          .containsExactly(new Student("10001", "Ada Brook", "Tue"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "windows-1252"})
    void isReadInWhateverEncoding(String charset) throws IOException {
      assertThat(
              roster("id,name\n7,José Müller\n", Charset.forName(charset), RosterColumns.STANDARD)
                  .students())
          .containsExactly(new Student("7", "José Müller", ""));
    }

    @Test
    void mayHaveQuotesBlankRowsAndAByteOrderMark() throws IOException {
      assertThat(
              roster("\uFEFF\"ID\",\"Name\"\n\n\"007\",\"Brook, Ada \"\"A\"\"\"\n,\n").students())
          .containsExactly(new Student("007", "Brook, Ada \"A\"", ""));
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "number,who\\n1,a | there is no column id (name the columns under \"roster\" in the"
              + " profile); its columns are number, who",
          "id,name\\n1,a\\n2,b\\n1,c | the id 1 stands in the rows 2 and 4",
          "id,name\\n | there is no student in it",
          "'' | the file is empty",
          "id,name\\n\"1,a | the file is no table of comma-separated values"
        })
    void thatCannotBeUsedIsRefusedWithTheReason(String text, String reason) {
      assertThatIOException()
          .isThrownBy(() -> roster(text.replace("\\n", "\n")))
          .withMessage(reason);
    }

    @Test
    void hasTheColumnsOfTheProfile() {
      assertThatIOException()
          .isThrownBy(() -> roster("Number,First,Last\n1,a,b\n", StandardCharsets.UTF_8, OWN))
          .withMessageStartingWith("there is no column Group ");
    }
  }

  @Nested
  class AStudent {

    private Optional<String> found(String fileName) throws IOException {
      Label label = Naming.presets().get("underscore-separated").read(Path.of(fileName), 0);
      return roster(
              """
              id,name
              10001,Ada Brook
              a0777,Ana de la Cruz
              10003,Jane Marie Doe
              10004,Sam Lee
              10005,Lee Sam Tate
              10006,José Núñez
              """)
          .student(label)
          .map(Student::id);
    }

    @ParameterizedTest
    @CsvSource({
      "Whoever_Else_10001_lab.ods, 10001",
      "Cruz_Ana_A0777_lab.ods, a0777",
      "De_La_Cruz_Ana_99_lab.ods, a0777",
      "Doe_Jane_99_lab.ods, 10003",
      "Nunez_Jose_99_lab.ods, 10006"
    })
    void isFoundByIdElseByName(String file, String id) throws IOException {
      assertThat(found(file)).contains(id);
    }

    @ParameterizedTest
    @CsvSource({"Lee_Sam_99_lab.ods", "Brook_Eva_99_lab.ods", "lab.ods"})
    void isNobodyWhereTheNameIsSeveralPeoplesOrNobodys(String file) throws IOException {
      assertThat(found(file)).isEmpty();
    }
  }
}
