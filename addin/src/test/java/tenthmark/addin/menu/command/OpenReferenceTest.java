package tenthmark.addin.menu.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.addin.menu.RefusalException;
import tenthmark.measurement.wording.Language;

class OpenReferenceTest {

  @TempDir private Path folder;

  @Test
  void takesThePageOfTheLanguageElseTheEnglishOne() throws Exception {
    Path english = Files.createFile(folder.resolve("function-reference.html"));
    Path german = Files.createFile(folder.resolve("function-reference-de.html"));
    assertThat(OpenReference.page(folder, Language.GERMAN)).isEqualTo(german);
    assertThat(OpenReference.page(folder, Language.ENGLISH)).isEqualTo(english);
    assertThat(OpenReference.page(folder, Language.FRENCH)).isEqualTo(english);
  }

  @Test
  void reachesASectionByTheSignpostBesideThePage() {
    assertThat(OpenReference.signpost(folder.resolve("function-reference-de.html"), "LAB_READING"))
        .isEqualTo(folder.resolve("function-reference-de").resolve("LAB_READING.html"));
  }

  @Test
  void saysThatThereIsNone() {
    assertThatThrownBy(() -> OpenReference.page(folder, Language.ENGLISH))
        .isInstanceOf(RefusalException.class)
        .hasMessage("reference.missing");
  }
}
