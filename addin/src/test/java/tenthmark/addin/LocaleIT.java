package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;

/** Comma decimals, and the option that functions keep their English names. */
@ExtendWith(OfficeExtension.class)
class LocaleIT {

  private static final String STORED = "=TENTHMARK.LAB.READING(2.5;0.4)";

  /** With the option on, 7.4 shows and takes the stored name; 25.2 keeps the display name. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en-US | false | LAB_READING                         | (2.5,0.4) | 0.5",
        "en-US | true  | LAB_READING, TENTHMARK.LAB.READING  | (2.5,0.4) | 0.5",
        "de-DE | false | LAB_READING                         | (2,5;0,4) | 0,5",
        "de-DE | true  | LAB_READING, TENTHMARK.LAB.READING  | (2,5;0,4) | 0,5",
      })
  void oneFormulaIsTypedInManyWaysAndStoredInOne(
      String locale,
      boolean englishNames,
      String names,
      String arguments,
      String half,
      Office plain)
      throws Exception {
    Profile local = Profile.withExtension().inLocale(locale);
    try (Office office = Office.start(englishNames ? local.withEnglishFunctionNames() : local);
        Workbook workbook = office.create()) {
      String shown = workbook.set("A1", STORED).localFormula("A1");
      assertThat(names.split(", ")).contains(shown.substring(1).replace(arguments, ""));
      workbook.type("B1", shown);
      for (String cell : new String[] {"A1", "B1"}) {
        assertThat(workbook.number(cell)).isEqualTo(1);
        assertThat(workbook.formula(cell)).isEqualTo(STORED);
      }
      workbook.set("A2", "=1/2").set("A3", "=TENTHMARK.LAB.RESULT(172.46;A2)");
      assertThat(workbook.shown("A2")).isEqualTo(half);
      assertThat(workbook.shown("A3")).isEqualTo("172" + half.charAt(1) + "5 ± " + half);
      for (Format format : Format.values()) {
        try (Workbook elsewhere = plain.open(workbook.save("local", format)).recalculateHard()) {
          assertThat(elsewhere.number("B1")).isEqualTo(1);
          assertThat(elsewhere.formula("B1")).isEqualTo(STORED);
        }
      }
    }
  }

  @Test
  void aNameMayBeTypedInSmallLetters(Office office) throws Exception {
    try (Workbook workbook = office.create().type("A1", "=lab_reading(2.5,0.4)")) {
      assertThat(workbook.localFormula("A1")).isEqualTo("=LAB_READING(2.5,0.4)");
      assertThat(workbook.number("A1")).isEqualTo(1);
    }
  }

  /** A German Calc takes 2.5 for a name. */
  @Test
  void aPointInAFormulaIsToldWhereNumbersHaveCommas() throws Exception {
    try (Office office = Office.start(Profile.withExtension().inLocale("de-DE"));
        Workbook workbook = office.create()) {
      workbook.type("A1", "=LAB_READING(2.5)").set("B1", "=TENTHMARK.LAB.WHY(A1)");
      assertThat(workbook.shown("A1")).isEqualTo("#NAME?");
      assertThat(workbook.shown("B1"))
          .isEqualTo(
              "A number in the formula has a decimal point, which this office takes for part of a"
                  + " name; here numbers are written with a comma.");
    }
  }

  @Test
  void aTextWithACommaIsNoNumber(Office office) throws Exception {
    try (Workbook workbook = office.create()) {
      workbook.set("A1", "'172,46").set("A2", "=TENTHMARK.LAB.RESULT(A1;0.5)");
      assertThat(workbook.shown("A2"))
          .isEqualTo("LAB_RESULT: value is the text \"172,46\"; it must be a number.");
    }
  }
}
