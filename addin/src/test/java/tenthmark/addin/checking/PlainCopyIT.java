package tenthmark.addin.checking;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;

/** A copy without LAB functions, saved from the menu. */
@ExtendWith(OfficeExtension.class)
class PlainCopyIT {

  private static final Path SAMPLES = Path.of("../sample-workbooks/workbooks");
  private static final String COMMAND = "tenthmark:plain-copy";

  @ParameterizedTest
  @ValueSource(strings = {".ods", ".xlsx"})
  void holdsTheValuesOfTheOpenDocument(String ending, Office office) throws Exception {
    Path copy = office.folder().resolve("first-lab-table-plain" + ending);
    try (Workbook workbook = office.open(SAMPLES.resolve("first-lab-table" + ending))) {
      workbook.set("Records.C5", 173.5).recalculateHard();
      DispatchResultEvent result = workbook.dispatch(COMMAND);
      assertThat((String) result.Result).startsWith("Written beside this document: ");
      try (Workbook plain = office.open(copy)) {
        assertThat(plain.formula("Records.N5"))
            .isEqualTo(workbook.shown("Records.N5"))
            .startsWith("173.5");
        assertThat(plain.formula("Records.M5")).doesNotContainIgnoringCase("LAB");
      }
    } finally {
      Files.deleteIfExists(copy);
    }
  }

  /** A program cannot say yes. */
  @Test
  void replacesNoFileUnasked(Office office) throws Exception {
    Path there = Files.writeString(office.folder().resolve("first-lab-table-plain.ods"), "mine");
    try (Workbook workbook = office.open(SAMPLES.resolve("first-lab-table.ods"))) {
      assertThat(workbook.dispatch(COMMAND).Result)
          .isEqualTo("There is a file first-lab-table-plain.ods already. Replace it?");
      assertThat(there).hasContent("mine");
    } finally {
      Files.delete(there);
    }
  }

  @Test
  void needsADocumentThatIsSaved(Office office) throws Exception {
    try (Workbook workbook = office.create()) {
      DispatchResultEvent result = workbook.dispatch(COMMAND);
      assertThat(result.State).isEqualTo(DispatchResultState.FAILURE);
      assertThat(result.Result)
          .isEqualTo("Save this document first: the copy is written beside it.");
    }
  }
}
