package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;
import tenthmark.checker.report.FileChecker;

/** What a workbook says when it is opened where its functions cannot be called. */
@TestInstance(Lifecycle.PER_CLASS)
class FunctionsMissingIT {

  private static final String SENTENCE =
      "The LAB functions are missing here: they need LibreOffice Calc with the extension"
          + " tenthmark.oxt, and Java 17 or newer switched on in Tools, Options, LibreOffice,"
          + " Advanced.";

  private Office withThem;
  private Office withoutExtension;
  private Office withoutJava;

  @BeforeAll
  void start() throws Exception {
    withThem = Office.start(Profile.withExtension());
    withoutExtension = Office.start(Profile.plain());
    withoutJava = Office.start(Profile.withExtension().withoutJava());
  }

  @AfterAll
  void close() throws Exception {
    for (Office office : List.of(withThem, withoutExtension, withoutJava)) {
      office.close();
    }
  }

  static List<Path> workbooks() {
    try (Stream<Path> files = Files.walk(Saved.WORKBOOKS)) {
      return files.filter(file -> file.toString().matches(".*\\.(ods|xlsx|ots|xltx)")).toList();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void aSentenceSaysWhatToInstallWhereItIsNeededAndNothingElsewhere(Path file) throws Exception {
    assertThat(notice(withThem, file)).as("with extension and Java").isEmpty();
    assertThat(notice(withoutExtension, file)).as("without extension").isEqualTo(SENTENCE);
    assertThat(notice(withoutJava, file)).as("without Java").isEqualTo(SENTENCE);
  }

  @ParameterizedTest
  @EnumSource
  void aTableFromTheMenuSaysItToo(Format format) throws Exception {
    try (Workbook table = withThem.create()) {
      table.dispatch("tenthmark:new-table");
      table.set("A2", "Spoke").set("B2", "s").set("C2", 264).set("D2", "mm");
      table.set("E2", 1).set("G2", 2).set("P2", "fine marks");
      assertThat(table.shown("A6")).as("with extension and Java").isEmpty();
      Path saved = table.save("from-the-menu", format);
      assertThat(Saved.findings(FileChecker.load(), saved)).isEmpty();
      for (Office office : List.of(withoutExtension, withoutJava)) {
        try (Workbook there = office.open(saved)) {
          assertThat(there.shown("A6")).isEqualTo(SENTENCE);
        }
      }
    }
  }

  @Test
  void theCheckerSaysOnceThatTheExtensionOrJavaWasMissingAndNothingOfTheSentence()
      throws Exception {
    Path file = Saved.WORKBOOKS.resolve("templates/record-table-filled-in.ods");
    for (Office office : List.of(withoutExtension, withoutJava)) {
      try (Workbook workbook = office.open(file)) {
        assertThat(workbook.shown("A4")).isEqualTo(SENTENCE);
        assertThat(Saved.findings(FileChecker.load(), workbook.save("without", Format.ODS)))
            .singleElement()
            .asString()
            .endsWith("saved-without-extension");
      }
    }
  }

  private static String notice(Office office, Path file) throws Exception {
    try (Workbook workbook = office.open(file)) {
      return workbook.shown(file.getParent().equals(Saved.WORKBOOKS) ? "A3" : "A4");
    }
  }
}
