package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import tenthmark.addin.generator.WorkedExample;
import tenthmark.addin.generator.WorkedExample.Step;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/** The worked examples of the reference, typed into a real Calc of each language. */
@ExtendWith(OfficeExtension.class)
class WorkedExamplesIT {

  /** The page keeps the colon of a French error beside its word, which Calc does not. */
  private static final char KEPT_TOGETHER = '\u00a0';

  private static final Pattern COMMA = Pattern.compile("(?<=\\d),(?=\\d)");

  @Test
  void showWhatTheReferenceSays(Office english) throws Exception {
    check(english, Language.ENGLISH);
  }

  /** Needs Debian's libreoffice-l10n-de, -fr and -es. */
  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void showWhatItSaysInOtherOffices(Language language) throws Exception {
    String code = language.code();
    Profile profile = Profile.withExtension().inLanguage(code).inLocale(code + "-" + code);
    try (Office office = Office.start(profile)) {
      check(office, language);
    }
  }

  private static void check(Office office, Language language) throws Exception {
    for (WorkedExample example : WorkedExample.in(Sentences.in(language))) {
      try (Workbook workbook = office.create()) {
        for (Step step : example.steps()) {
          workbook.set(step.cell(), typed(step));
        }
        for (Step step : example.steps()) {
          if (step.isFormula()) {
            assertThat(shown(workbook, step).replace(KEPT_TOGETHER, ' '))
                .as(step.content())
                .isEqualTo(step.shows().replace(KEPT_TOGETHER, ' '));
          }
        }
      }
    }
  }

  /** As the interface of the office takes it, whose numbers have a point in every language. */
  private static String typed(Step step) {
    return COMMA.matcher(step.content()).replaceAll(".").replace("LAB_", "TENTHMARK.LAB.");
  }

  /** A number to the digits that the reference prints. */
  private static String shown(Workbook workbook, Step step) throws Exception {
    if (workbook.error(step.cell()) != 0 || workbook.isText(step.cell())) {
      return workbook.shown(step.cell());
    }
    String sign = step.shows().contains(",") ? "," : ".";
    int digits = new BigDecimal(step.shows().replace(sign, ".")).scale();
    return new BigDecimal(workbook.number(step.cell()))
        .setScale(digits, RoundingMode.HALF_UP)
        .toPlainString()
        .replace(".", sign);
  }
}
