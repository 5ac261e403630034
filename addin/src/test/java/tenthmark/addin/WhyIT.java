package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;
import tenthmark.measurement.catalogue.BadArgument;

/** LAB_WHY in a real sheet: on a bad argument of every function, and on Calc's own errors. */
@ExtendWith(OfficeExtension.class)
class WhyIT {

  private Workbook workbook;

  @BeforeEach
  void use(Workbook empty) {
    workbook = empty;
  }

  @Test
  void namesTheBadArgumentOfEveryFunctionAndParameter() throws Exception {
    List<BadArgument> all = BadArgument.ofEveryParameter().toList();
    for (int i = 0; i < all.size(); i++) {
      BadArgument bad = all.get(i);
      workbook.addSheet("Bad" + i);
      EveryFunction.writeCells(workbook, "Bad" + i, bad.declaration());
      String call =
          bad.formula().replace(bad.declaration().displayName(), bad.declaration().storedName());
      workbook
          .set("Bad" + i + "." + BadArgument.CALL, call)
          .set("Bad" + i + ".Z90", "=TENTHMARK.LAB.WHY(" + BadArgument.CALL + ")");
    }
    for (int i = 0; i < all.size(); i++) {
      String said = workbook.shown("Bad" + i + ".Z90");
      assertThat(said).as(all.get(i).formula()).isEqualTo(all.get(i).sentence());
      assertThat(said).matches(all.get(i)::namesTheParameter);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "=A1/A9 | Division by zero: A9 is blank, which counts as 0.",
        "=SQRT(-A1) | the square root of minus A1 has no value: SQRT(-5) is not defined.",
        "=A1+E2 | E2 holds the text \"soft grip\" where a number belongs.",
        "=A1+nowhere | nowhere is not a name that this workbook defines. If it is meant as a text,"
            + " it needs quotation marks.",
        "=NOSUCHFUNCTION(A1) | This office does not know the function NOSUCHFUNCTION.",
        "=LAB_HANDTIMD(2) | This office does not know the function LAB_HANDTIMD. Did you mean"
            + " LAB_HANDTIMED?",
        "=TENTHMARK.LAB.READING(1;fine) | fine is not a name that this workbook defines. If it is"
            + " meant as a text, it needs quotation marks.",
        "=TENTHMARK.LAB.READING(0;5) | LAB_READING: division is 0; it must be a number greater than"
            + " zero. Is a decimal number meant? The comma stands between arguments here; write the"
            + " number with a point, as in 0.5.",
        "=A3*2 | Cell A3 holds the error #DIV/0!. The reason there: Division by zero: A9 is blank,"
            + " which counts as 0.",
        "=TENTHMARK.LAB.TOTAL(A1:A3) | Cell A3 holds the error #DIV/0!. The reason there: Division"
            + " by zero: A9 is blank, which counts as 0.",
        "=VLOOKUP(99;A1:A1;1;0) | what stands beside the value that is looked for in a table"
            + " (VLOOKUP of 99, the cells A1:A1, 1 and 0) has no value: VLOOKUP does not find what"
            + " it searches for.",
        "=B1+1 | cells refer to each other in a circle: B1, B1.",
        "=A1^2 | no error: B1 is A1 squared."
      })
  void namesTheReasonOfAnError(String formula, String sentence) throws Exception {
    workbook.set("A1", 5).set("E2", "soft grip").set("A3", "=A1/A9").set("B1", formula);
    assertThat(workbook.set("C1", "=TENTHMARK.LAB.WHY(B1)").shown("C1")).isEqualTo(sentence);
  }

  @Test
  void followsEdits() throws Exception {
    workbook.set("A1", 0).set("B1", "=1/A1").set("C1", "=TENTHMARK.LAB.WHY(B1)");
    assertThat(workbook.shown("C1")).isEqualTo("Division by zero: A1 is 0.");
    workbook.set("A1", 4);
    assertThat(workbook.shown("C1")).isEqualTo("no error: B1 is 1 divided by A1.");
    workbook.set("B1", "=2/A1");
    assertThat(workbook.shown("C1")).isEqualTo("no error: B1 is 2 divided by A1.");
  }
}
