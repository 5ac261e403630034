package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.checker.workbook.Grid;
import tenthmark.measurement.wording.Language;

/** {@code --language}. Students and numbers are invented. */
class LanguagesTest {

  @TempDir Path folder;

  private final StringWriter err = new StringWriter();
  private Path workbook;

  @BeforeEach
  void write() {
    workbook =
        Grid.sheet("Records")
            .row("Quantity", "Value", "Unit", "Reading", "Physical", "Uncertainty", "Rationale")
            .row("Foam grip", 128.25, "mm", 0.5, 2.5, 1.5, "Soft ends, fine marks.")
            .xlsx(folder.resolve("ada.xlsx"));
  }

  private String run(Object... arguments) {
    StringWriter out = new StringWriter();
    Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
    return out.toString();
  }

  @Nested
  class Findings {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "en | error total-differs: the total of \"Foam grip\" is 1.5; expected: 3 (straight:"
              + " reading 0.5 + physical 2.5) or 2.54951 (quadrature of the same); to fix: Let",
          "de | Fehler total-differs: die Gesamtunsicherheit bei „Foam grip“ ist 1,5; erwartet: 3"
              + " (Summe: Ablesung 0,5 + Messobjekt 2,5) oder 2,54951 (Wurzel aus der Summe der"
              + " Quadrate); was zu tun ist: Bitte",
          "fr | erreur total-differs\u00a0: le total de «\u00a0Foam grip\u00a0» est 1,5\u00a0; attendu\u00a0: 3 (somme\u00a0:"
              + " lecture 0,5 + objet 2,5) ou 2,54951 (racine de la somme des carrés)\u00a0; que faire"
              + "\u00a0: Faites",
          "es | error total-differs: el total de «Foam grip» es 1,5; se esperaba: 3 (suma: lectura"
              + " 0,5 + objeto 2,5) o 2,54951 (raíz de la suma de los cuadrados); qué hacer: Deje",
        })
    void areInTheLanguageWithItsDecimalSign(String code, String line) {
      assertThat(run("check", "--language", code, workbook)).contains(line);
    }

    @Test
    void keepTheWordsThatProgramsLookForInJson() throws Exception {
      JsonNode finding =
          new ObjectMapper()
              .readTree(run("check", "--format", "json", "--language", "de", workbook))
              .at("/files/0/findings/1");

      assertThat(finding.get("rule").asText()).isEqualTo("total-differs");
      assertThat(finding.get("severity").asText()).isEqualTo("error");
      assertThat(finding.get("found").asText())
          .isEqualTo("die Gesamtunsicherheit bei „Foam grip“ ist 1,5");
      assertThat(finding.get("fix").asText()).startsWith("Bitte =LAB_TOTAL(...)");
    }

    @Test
    void sayWhyALabFunctionRefusesAnArgument() {
      Path refused =
          Grid.sheet("Scale").row("=LAB_READING(-0.5)").xlsx(folder.resolve("refused.xlsx"));

      assertThat(run("check", "--language", "fr", refused))
          .contains(
              "LAB_READING\u00a0: division est -0,5\u00a0; il faut un nombre supérieur à zéro.");
    }

    @Test
    void areEnglishWhateverTheLanguageOfTheMachine() {
      Locale own = Locale.getDefault();
      try {
        Locale.setDefault(Locale.GERMANY);
        assertThat(run("check", workbook)).contains("the total of \"Foam grip\" is 1.5");
      } finally {
        Locale.setDefault(own);
      }
    }

    @Test
    void areInTheLanguageOfTheProfileUnlessTheCommandLineSaysAnother() throws Exception {
      Path profile = Files.writeString(folder.resolve("course.yaml"), "language: es\n");

      assertThat(run("check", "--profile", profile, workbook)).contains("el total de «Foam grip»");
      assertThat(run("check", "--profile", profile, "--language", "en", workbook))
          .contains("the total of \"Foam grip\"");
    }

    /** What is kept is no sentence yet. */
    @Test
    void thatWereKeptCanBeSaidInAnotherLanguage() {
      Path state = folder.resolve("state");
      run("check", "--state", state, workbook);

      String again = run("check", "--changed-only", "--state", state, "--language", "de", workbook);

      assertThat(again).contains("die Gesamtunsicherheit bei „Foam grip“ ist 1,5");
      assertThat(err.toString()).contains("1 unchanged since the last check");
    }
  }

  @Nested
  class Rules {

    @ParameterizedTest
    @CsvSource({"en, looks for:", "de, sucht:", "fr, cherche:", "es, busca:"})
    void areExplained(String code, String label) {
      assertThat(run("explain", "--language", code, "unit-missing"))
          .contains("unit-missing (", "  " + label);
      assertThat(run("rules", "--language", code)).contains("total-differs (", "  " + label);
    }
  }

  @Nested
  class Reports {

    private Path report(String code) {
      Path reports = folder.resolve("reports-" + code);
      run("check", "--language", code, "--out", reports, workbook);
      return reports;
    }

    @ParameterizedTest
    @EnumSource
    void sayTheirLanguage(Language language) throws Exception {
      Path reports = report(language.code());
      for (String page : List.of("class.html", "workbooks/ada.xlsx/feedback.html")) {
        Document document = Jsoup.parse(Files.readString(reports.resolve(page)));
        assertThat(document.selectFirst("html").attr("lang")).isEqualTo(language.code());
      }
    }

    @Test
    void areInOneLanguageAsAWhole() throws Exception {
      Path reports = report("de");

      Document page =
          Jsoup.parse(Files.readString(reports.resolve("workbooks/ada.xlsx/feedback.html")));
      assertThat(page.title()).isEqualTo("Rückmeldung zu ada.xlsx");
      assertThat(page.select("article dt").eachText())
          .startsWith("Gefunden", "Erwartet", "Warum das wichtig ist", "Was zu tun ist");
      assertThat(page.select("#records td").eachText()).contains("128,25", "1,5");
      assertThat(page.select("footer").text()).startsWith("Tenthmark ist ein Lernprogramm.");
      assertThat(Files.readString(reports.resolve("class.html")))
          .contains("Befunde nach Regeln", "1 Datei geprüft, 1 Fehler, 1 Warnung");
      assertThat(Files.readString(reports.resolve("junit.xml")))
          .contains("erwartet: 3 (Summe: Ablesung 0,5 + Messobjekt 2,5)");
      assertThat(Files.readString(reports.resolve("gradebook.csv"))).contains("points lost");
    }

    @Test
    void areInOneLanguageInTheCopyToo() throws Exception {
      Path copy = report("fr").resolve("workbooks/ada.xlsx/ada.xlsx");
      try (InputStream content = Files.newInputStream(copy);
          Workbook annotated = WorkbookFactory.create(content)) {
        Sheet findings = annotated.getSheet("Remarques");
        assertThat(findings.getRow(0).getCell(0).getStringCellValue())
            .isEqualTo("Remarques sur ada.xlsx");
        assertThat(annotated.getSheet("Records").getRow(1).getCell(5).getCellComment().getString())
            .hasToString(
                "Tenthmark checker\u00a0: erreur total-differs\n"
                    + "Trouvé\u00a0: le total de «\u00a0Foam grip\u00a0» est 1,5\n"
                    + "Attendu\u00a0: 3 (somme\u00a0: lecture 0,5 + objet 2,5) ou 2,54951 (racine de la"
                    + " somme des carrés)\n"
                    + "Que faire\u00a0: Faites calculer le total de toutes les contributions de la"
                    + " ligne par =LAB_TOTAL(...).");
      }
    }
  }

  @Test
  void otherLanguagesAreRefused() {
    run("check", "--language", "la", workbook);
    assertThat(err.toString()).contains("la is none of en, de, fr, es");
  }
}
