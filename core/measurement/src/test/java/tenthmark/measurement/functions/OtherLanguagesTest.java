package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.measurement.functions.Calls.call;
import static tenthmark.measurement.functions.Calls.callIn;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.number;
import static tenthmark.measurement.functions.Calls.row;
import static tenthmark.measurement.functions.Calls.table;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/** What functions write and read in an office that is not English. */
class OtherLanguagesTest {

  private static final Sentences GERMAN = Sentences.in(Language.GERMAN, DecimalSign.COMMA);

  private static Value foamGrip() {
    return table(
        row("reading", "Millimeterstriche, zwei Enden", 0.5),
        row("physical", "weiche Enden des Griffs", 1.25));
  }

  @Nested
  class Texts {

    @Test
    void haveGermanSentencesAndADecimalComma() {
      assertThat(callIn(GERMAN, "LAB_RATIONALE", foamGrip(), "mm"))
          .isEqualTo(
              Value.of(
                  "Die Ableseunsicherheit beträgt 0,5 mm (Millimeterstriche, zwei Enden). Die"
                      + " Unsicherheit durch das Messobjekt beträgt 1,25 mm (weiche Enden des"
                      + " Griffs). Die Geräteunsicherheit ist vernachlässigbar. Insgesamt beträgt"
                      + " die Unsicherheit 1,75 mm, die Summe der Beiträge."));
      assertThat(callIn(GERMAN, "LAB_AGREE", 172.5, 0.5, 170.5, 2))
          .isEqualTo(
              Value.of(
                  "Verträglich: Die Werte unterscheiden sich um 2, das ist das 0,8-Fache der 2,5,"
                      + " die ihre Unsicherheiten zulassen."));
      assertThat(callIn(GERMAN, "LAB_AGREE", 172.5, 0.5, 170, 1.5))
          .isEqualTo(
              Value.of(
                  "Nicht verträglich: Die Werte unterscheiden sich um 2,5, das ist das 1,25-Fache"
                      + " der 2, die ihre Unsicherheiten zulassen."));
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "172.46    | 0.5    | plain      | 172,5 ± 0,5 km/h.",
          "172.46    | 0.05   | brief      | 172,46(5) km/h.",
          "12.46     | 1.2    | brief      | 12,5(1,2) km/h.",
          "172.46    | 0.5    | percent    | 172,5 km/h. ± 0,3 %",
          "172460000 | 500000 | scientific | (1,725 ± 0,005)×10^8 km/h.",
          "172.46    | 0      | plain      | 172,46 km/h. (exakt)",
        })
    void writeRecordsWithACommaInTheNumbersOnly(
        double value, double uncertainty, String style, String record) {
      assertThat(callIn(GERMAN, "LAB_RESULT", value, uncertainty, "km/h.", null, style))
          .isEqualTo(Value.of(record));
    }

    /** The language of the office and the sign of its numbers are two settings. */
    @Test
    void takeTheSignOfTheLocaleNotOfTheLanguage() {
      Sentences swiss = Sentences.in(Language.GERMAN, DecimalSign.POINT);
      assertThat(callIn(swiss, "LAB_AGREE", 1.1, 0.1, 0.9, 0.1))
          .isEqualTo(
              Value.of(
                  "Verträglich: Die Werte unterscheiden sich um 0.2, das ist das 1-Fache der 0.2,"
                      + " die ihre Unsicherheiten zulassen."));
    }

    @Test
    void labelTables() {
      assertThat(
              firstColumn(callIn(GERMAN, "LAB_WEIGHTED", column(2.31, 2.35), column(0.02, 0.04))))
          .containsExactly(
              "gewichteter Mittelwert",
              "Unsicherheit",
              "Chi-Quadrat",
              "Freiheitsgrade",
              "Streuverhältnis");
      assertThat(firstColumn(callIn(GERMAN, "LAB_BUDGET", foamGrip())))
          .containsExactly("Ablesung", "Messobjekt", "gesamt");
    }

    private static List<String> firstColumn(Value result) {
      return ((Value.Table) result)
          .rows().stream().map(cells -> ((Value.Text) cells.get(0)).text()).toList();
    }
  }

  @Nested
  class Errors {

    @Test
    void nameTheArgumentAndWhatIsAllowed() {
      assertThat(callIn(GERMAN, "LAB_READING", -0.5))
          .isEqualTo(
              new Value.Fault(
                  "LAB_READING: division ist -0,5; erlaubt ist eine Zahl größer als null."));
      assertThat(callIn(GERMAN, "LAB_TOTAL", column(0.5, "etwa 1")))
          .isEqualTo(
              new Value.Fault(
                  "LAB_TOTAL: contributions (Zeile 2) ist der Text „etwa 1“; erlaubt ist eine Zahl,"
                      + " null oder größer."));
      assertThat(callIn(GERMAN, "LAB_BUDGET", table(row("Messfehler", "Skala", 1))).toString())
          .contains(
              "LAB_BUDGET: table (Zeile 1, Spalte 1) ist der Text „Messfehler“; erlaubt ist eines"
                  + " dieser Wörter: Ablesung, Messobjekt, Messgerät, Wiederholung, Zeitnahme.");
      assertThat(callIn(GERMAN, "LAB_COVER", 0.5))
          .isEqualTo(
              new Value.Fault(
                  "LAB_COVER: freedom ist 0,5; erlaubt ist eine Zahl, 1 oder größer, oder das Wort"
                      + " unendlich."));
    }

    @Test
    void saySoOfFormulasAndFits() {
      assertThat(
              callIn(GERMAN, "LAB_CARRYTEXT", "SQRT(a-1.5)", column("a"), column(1), column(0.1)))
          .isEqualTo(new Value.Fault("LAB_CARRYTEXT: SQRT(-0,5) ist nicht definiert."));
      assertThat(callIn(GERMAN, "LAB_SLOPE", column(1, 1, 1), column(1, 2, 3)))
          .isEqualTo(
              new Value.Fault(
                  "LAB_SLOPE: alle x sind gleich; eine Steigung braucht mindestens zwei"
                      + " verschiedene x."));
    }

    /** Bad calls of every function: nothing is said in English that another language says. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "ENGLISH")
    void areInTheLanguageOfTheCall(Language language) {
      Sentences sentences = Sentences.in(language, DecimalSign.POINT);
      for (WorksheetFunction function : Catalogue.load().functions()) {
        String name = function.declaration().displayName();
        for (Object bad : new Object[] {null, "zzz", -7.5, column("zzz", -7.5), table(row(1, 2))}) {
          Object[] arguments = new Object[function.declaration().parameters().size()];
          Arrays.fill(arguments, bad);
          String english = sentence(call(name, arguments));
          String said = sentence(callIn(sentences, name, arguments));
          assertThat(said.startsWith(sentences.say("titled", name, "")))
              .isEqualTo(english.startsWith(name + ": "));
          if (english.startsWith(name + ": ")) {
            assertThat(said)
                .isNotEqualTo(english)
                .doesNotContain("it must be", " is ", "a number", "a range", "a reference");
          }
        }
      }
    }

    private static String sentence(Value result) {
      if (result instanceof Value.Table table) {
        return sentence(table.cells().get(0));
      }
      if (result instanceof Value.Text text) {
        return text.text();
      }
      return result instanceof Value.Fault fault ? fault.reason() : "";
    }
  }

  @Nested
  class Reading {

    @ParameterizedTest
    @EnumSource
    void takesTheKindsOfEveryLanguage(Language language) {
      Sentences sentences = Sentences.in(language, DecimalSign.COMMA);
      Value.Table budget = (Value.Table) callIn(sentences, "LAB_BUDGET", foamGrip());
      Value contributions =
          new Value.Table(budget.rows().subList(0, 2).stream().map(r -> r.subList(0, 3)).toList());
      assertThat(call("LAB_BUDGET", contributions)).isEqualTo(call("LAB_BUDGET", foamGrip()));
    }

    @ParameterizedTest
    @CsvSource({
      "ABLESUNG, reading",
      "Messgerat, instrument",
      "repetition, repeat",
      "objet, physical",
      "Cronometraje, timing"
    })
    void ignoresCaseAndAccents(String word, String kind) {
      assertThat(call("LAB_BUDGET", table(row(word, "why", 1))))
          .isEqualTo(call("LAB_BUDGET", table(row(kind, "why", 1))));
    }

    @ParameterizedTest
    @EnumSource
    void takesAFreedomWithoutLimitFromEveryLanguage(Language language) {
      Sentences sentences = Sentences.in(language, DecimalSign.COMMA);
      Value infinite = callIn(sentences, "LAB_FREEDOM", column(0.1, 0.2), column(null, null));
      assertThat(call("LAB_COVER", infinite)).isEqualTo(call("LAB_COVER", "infinite"));
    }

    /** What LAB_RESULT writes in one office, LAB_READBACK reads in any other. */
    @ParameterizedTest
    @EnumSource
    void takesRecordsOfEveryLanguage(Language language) {
      Random random = new Random(11);
      for (DecimalSign sign : DecimalSign.values()) {
        Sentences sentences = Sentences.in(language, sign);
        for (String style : List.of("plain", "brief", "scientific")) {
          for (int i = 0; i < 30; i++) {
            double uncertainty = random.nextInt(5) == 0 ? 0 : Math.pow(10, random.nextInt(13) - 6);
            double value = random.nextGaussian() * 1000;
            Value record = callIn(sentences, "LAB_RESULT", value, uncertainty, "mm", 3, style);
            assertThat(number("LAB_READBACK", record, "value"))
                .as(record.toString())
                .isEqualTo(number("LAB_ROUNDEDVALUE", value, uncertainty, 3));
            assertThat(number("LAB_READBACK", record, "uncertainty"))
                .as(record.toString())
                .isEqualTo(number("LAB_ROUNDEDERROR", value, uncertainty, 3));
            assertThat(callIn(sentences, "LAB_READBACK", record, "unit")).isEqualTo(Value.of("mm"));
          }
        }
      }
    }
  }
}
