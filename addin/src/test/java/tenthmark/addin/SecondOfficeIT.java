package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.addin.EveryFunction.everything;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.addin.office.Launcher;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;

/**
 * Files that one supported office version saved, in another one: the one that
 * install-notes/second-office.sh sets up.
 */
@ExtendWith(OfficeExtension.class)
@EnabledIfEnvironmentVariable(named = "TENTHMARK_SECOND_OFFICE", matches = ".+")
@TestInstance(Lifecycle.PER_CLASS)
class SecondOfficeIT {

  private static final int DIGITS = 15;

  private Office first;
  private Office second;

  @BeforeAll
  void start(Office installed) throws Exception {
    first = installed;
    second = Office.start(Launcher.second().orElseThrow(), Profile.withExtension());
  }

  @AfterAll
  void close() throws Exception {
    second.close();
  }

  @ParameterizedTest
  @EnumSource
  void theOtherCalculatesWhatTheFirstSaved(Format format) throws Exception {
    carry(first, second, format);
  }

  @ParameterizedTest
  @EnumSource
  void theFirstCalculatesWhatTheOtherSaved(Format format) throws Exception {
    carry(second, first, format);
  }

  private static void carry(Office from, Office to, Format format) throws Exception {
    try (Workbook saved = EveryFunction.in(from);
        Workbook opened = to.open(saved.save("carried", format)).recalculateHard()) {
      assertThat(everything(opened, DIGITS)).containsExactlyElementsOf(everything(saved, DIGITS));
    }
  }
}
