package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.WorkbookFile;

/** Workbooks that students recalculate and save in an office of another language. */
@TestInstance(Lifecycle.PER_CLASS)
class OtherLanguagesIT {

  private final FileChecker checker = FileChecker.load();
  private final Map<Path, List<String>> inEnglish = new HashMap<>();

  /** Recalculated and saved too, which mends some of the mistakes that the class set plants. */
  @BeforeAll
  void checkWhatAnEnglishOfficeSaves() throws Exception {
    try (Office office = Office.start(Profile.withExtension().inLanguage("en-US"))) {
      for (Path file : workbooks()) {
        inEnglish.put(file, Saved.findings(checker, saved(office, file)));
      }
    }
  }

  /** Needs Debian's libreoffice-l10n-de, -fr and -es. */
  @ParameterizedTest
  @CsvSource({
    "de, de-DE, Die Ableseunsicherheit beträgt",
    "fr, fr-FR, L’incertitude de lecture est de",
    "es, es-ES, La incertidumbre de lectura es de"
  })
  void theCheckerFindsInThemWhatItFindsInEnglish(String language, String locale, String rationale)
      throws Exception {
    Profile local = Profile.withExtension().inLanguage(language).inLocale(locale);
    boolean translated = false;
    try (Office office = Office.start(local)) {
      for (Path file : workbooks()) {
        Path saved = saved(office, file);
        assertThat(Saved.findings(checker, saved))
            .as(file.toString())
            .isEqualTo(inEnglish.get(file));
        translated |=
            WorkbookFile.read(saved).sheets().stream()
                .flatMap(sheet -> sheet.cells())
                .anyMatch(cell -> stores(cell.content(), rationale));
      }
    }
    assertThat(translated).as(rationale).isTrue();
  }

  private static boolean stores(Content content, String beginning) {
    return content instanceof Content.Formula formula
        && formula
            .stored()
            .filter(Content.Text.class::isInstance)
            .filter(text -> ((Content.Text) text).text().startsWith(beginning))
            .isPresent();
  }

  private static List<Path> workbooks() throws Exception {
    try (Stream<Path> files = Files.walk(Saved.WORKBOOKS)) {
      return files.filter(file -> file.toString().matches(".*\\.(ods|xlsx)")).sorted().toList();
    }
  }

  private static Path saved(Office office, Path file) throws Exception {
    Workbook.Format format =
        file.toString().endsWith(".ods") ? Workbook.Format.ODS : Workbook.Format.XLSX;
    try (Workbook workbook = office.open(file)) {
      return workbook.recalculateHard().save("saved", format);
    }
  }
}
