package tenthmark.addin.office;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A missing office is a failure with a clear line, never a skipped test. */
class OfficeTest {

  @Test
  void saysThatItsProgramIsMissing() {
    Launcher missing = new Launcher(List.of("env", "PATH=/nonexistent"));
    assertThatThrownBy(() -> Office.start(missing, Profile.plain()))
        .hasMessageContaining("the office did not start (exit status 127)")
        .hasMessageContaining("libreoffice-java-common")
        .hasMessageContaining("soffice");
  }

  @Test
  void saysThatItsLauncherIsMissing() {
    Launcher missing = new Launcher(List.of("/nonexistent/launcher"));
    assertThatThrownBy(() -> Office.start(missing, Profile.plain()))
        .hasMessageContaining("the office cannot be run")
        .hasMessageContaining("libreoffice-java-common");
  }
}
