package tenthmark.addin.table;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;
import tenthmark.measurement.wording.Language;

/** A record table that is begun in an office of another language. */
@ExtendWith(OfficeExtension.class)
class TableLanguageIT {

  /** Needs Debian's libreoffice-l10n-de, -fr and -es. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "GERMAN | de | Messgröße | Die Ableseunsicherheit beträgt 0,5 mm (Striche)",
        "FRENCH | fr | Grandeur | L’incertitude de lecture est de 0,5 mm",
        "SPANISH | es | Magnitud | La incertidumbre de lectura es de 0,5 mm",
      })
  void isReadByTheCheckerAndGoesOnInEnglishOffices(
      Language language, String code, String heading, String rationale, Office english)
      throws Exception {
    Profile local = Profile.withExtension().inLanguage(code).inLocale(code + "-" + code);
    try (Office office = Office.start(local);
        Workbook workbook = office.create()) {
      done(workbook, "new-table");
      assertThat(workbook.shown("A1")).isEqualTo(heading);
      workbook.set("A2", "Griff").set("B2", "g").set("C2", 128.3).set("D2", "mm");
      workbook.set("E2", 1).set("G2", 2).set("H2", 3).set("P2", "Striche").set("P3", "Enden");
      assertThat(workbook.shown("N2")).isEqualTo("128 ± 2 mm");
      assertThat(workbook.shown("B3")).startsWith(rationale);
      assertThat(findings(workbook)).doesNotContain(" – ");
      workbook.set("M2", 1);
      assertThat(findings(workbook)).contains(".M2 – ");
      try (Workbook elsewhere = english.open(workbook.save("local", Format.ODS))) {
        done(elsewhere, "add-record");
        assertThat(elsewhere.shown("A6")).isEqualTo(new TableWords(language).rationale());
      }
    }
  }

  private static void done(Workbook workbook, String command) throws Exception {
    DispatchResultEvent result = workbook.dispatch("tenthmark:" + command);
    assertThat(result.State).as((String) result.Result).isEqualTo(DispatchResultState.SUCCESS);
  }

  private static String findings(Workbook workbook) throws Exception {
    return (String) workbook.dispatch("tenthmark:check").Result;
  }
}
