package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Patience;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.WindowOnScreen;
import tenthmark.addin.office.Workbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.FunctionTexts;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.wording.Language;

/** Texts in the language of the office's menus with the decimal sign of its cells. */
class LanguageIT {

  /** Needs Debian's libreoffice-l10n-de, -fr and -es. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de | de-DE | 172,5 ± 0,5 mm | Verträglich: Die Werte unterscheiden sich um 0,5, das ist"
            + " das 0,5-Fache der 1, die ihre Unsicherheiten zulassen.",
        "de | de-CH | 172.5 ± 0.5 mm | Verträglich: Die Werte unterscheiden sich um 0.5, das ist"
            + " das 0.5-Fache der 1, die ihre Unsicherheiten zulassen.",
        "fr | fr-FR | 172,5 ± 0,5 mm | En accord\u00a0: les valeurs diffèrent de 0,5, soit 0,5 fois"
            + " l’écart de 1 que permettent leurs incertitudes.",
        "es | es-MX | 172.5 ± 0.5 mm | Compatibles: los valores difieren en 0.5, que es 0.5 veces"
            + " la diferencia de 1 que permiten sus incertidumbres.",
        "en-US | de-DE | 172,5 ± 0,5 mm | Agree: the values differ by 0,5, which is 0,5 of the 1"
            + " that their uncertainties allow.",
      })
  void textsAreThoseOfTheOffice(String language, String locale, String record, String agreement)
      throws Exception {
    Profile local = Profile.withExtension().inLanguage(language).inLocale(locale);
    try (Office office = Office.start(local);
        Workbook workbook = office.create()) {
      workbook
          .set("A1", "=TENTHMARK.LAB.RESULT(172.46;0.5;\"mm\")")
          .set("A2", "=TENTHMARK.LAB.AGREE(172.5;0.5;172;0.5)")
          .set("A3", "=TENTHMARK.LAB.READBACK(A1;\"value\")");
      assertThat(workbook.shown("A1")).isEqualTo(record);
      assertThat(workbook.shown("A2")).isEqualTo(agreement);
      assertThat(workbook.number("A3")).isEqualTo(172.5);
    }
  }

  @Test
  void tablesAndErrorsAreInTheLanguageOfTheOffice() throws Exception {
    Profile german = Profile.withExtension().inLanguage("de").inLocale("de-DE");
    try (Office office = Office.start(german);
        Workbook workbook = office.create()) {
      workbook
          .setMatrix("A1:B2", "=TENTHMARK.LAB.WEIGHTED({2.31;2.35};{0.02;0.04})")
          .set("A5", "=TENTHMARK.LAB.RESULT(\"etwa 5\";0.5)")
          .set("A6", "=TENTHMARK.LAB.READING(-0.5)")
          .set("A7", "=TENTHMARK.LAB.WHY(A6)");
      assertThat(workbook.shown("A1")).isEqualTo("gewichteter Mittelwert");
      assertThat(workbook.shown("A2")).isEqualTo("Unsicherheit");
      assertThat(workbook.shown("A5"))
          .isEqualTo("LAB_RESULT: value ist der Text „etwa 5“; erlaubt ist eine Zahl.");
      assertThat(workbook.error("A6")).isEqualTo(502);
      assertThat(workbook.shown("A7"))
          .startsWith("LAB_READING: division ist -0,5; erlaubt ist eine Zahl größer als null.");
    }
  }

  @Test
  void theCheckerSpeaksTheLanguageOfTheOffice() throws Exception {
    Profile french = Profile.withExtension().inLanguage("fr").inLocale("fr-FR");
    try (Office office = Office.start(french);
        Workbook workbook =
            office.open(
                Path.of("../sample-workbooks/workbooks").resolve("first-lab-table-faulty.ods"))) {
      assertThat((String) workbook.dispatch("tenthmark:check").Result)
          .contains("Records.D11 – erreur\u00a0: l’unité manque pour «\u00a0Crank arm, mass\u00a0»")
          .contains(
              "Records.M9 – erreur\u00a0: le total de «\u00a0Foam grip, length\u00a0» est 1,5");
      workbook.choose("tenthmark:check");
      WindowOnScreen window = WindowOnScreen.await(office, "Vérifier ce classeur");
      window.press("Mettre des commentaires");
      Patience.until(
          "a comment in French",
          () ->
              workbook.comments("Records").stream()
                  .anyMatch(text -> text.contains("erreur\u00a0: l’unité manque pour")));
      assertThat(workbook.comments("Records"))
          .allSatisfy(text -> assertThat(text).contains("Attendu\u00a0: ", "Que faire\u00a0: "));
      window.press("Fermer");
      window.awaitEnd();
    }
  }

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void theFunctionWizardSpeaksTheLanguageOfTheOffice(Language language) throws Exception {
    FunctionTexts texts = FunctionTexts.in(language);
    try (Office office = Office.start(Profile.withExtension().inLanguage(language.code()))) {
      KnownFunctions known = KnownFunctions.of(office);
      for (WorksheetFunction function : Catalogue.load().functions()) {
        Declaration declaration = function.declaration();
        assertThat(known.description(declaration.displayName()))
            .isEqualTo(texts.description(declaration));
        assertThat(known.arguments(declaration.displayName()))
            .extracting(argument -> argument.Name, argument -> argument.Description)
            .containsExactlyElementsOf(
                declaration.parameters().stream()
                    .map(one -> tuple(one.name(), texts.inWizard(declaration, one)))
                    .toList());
      }
    }
  }
}
