package tenthmark.addin.explaining;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.DispatchResultState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.WindowOnScreen;
import tenthmark.addin.office.Workbook;

/** The command that explains the selected cell, in a table of a wheel's rim. Numbers invented. */
@ExtendWith(OfficeExtension.class)
class ExplainCellIT {

  private Office office;
  private Workbook workbook;

  @BeforeEach
  void fill(Office running, Workbook empty) throws Exception {
    office = running;
    workbook = empty;
    workbook.set("A1", "quantity").set("B1", "value").set("C1", "uncertainty");
    workbook.set("A2", "rim mass / kg").set("B2", 0.42).set("C2", 0.005);
    workbook.set("A3", "rim radius / m").set("B3", 0.311).set("C3", 0.011);
    workbook.set("A4", "inertia").set("B4", "=B2*B3^2");
    workbook.set("C4", "=TENTHMARK.LAB.CARRY(B4;B2:B3;C2:C3)");
    workbook.set("C5", "=TENTHMARK.LAB.READING(-1)");
  }

  @Test
  void showsWhatMakesUpACarriedUncertainty() throws Exception {
    assertThat(explained("C4"))
        .contains("The formula:\n=LAB_CARRY(B4,B2:B3,C2:C3)")
        .contains("B4 is B2 (rim mass / kg, value) times B3 (rim radius / m, value) squared.")
        .contains("What makes up the uncertainty (LAB_CARRY):")
        .containsPattern("B3 \\(rim radius / m, value\\) +0.311 +0.011 +0.2612 +0.002874 +85.6 %");
  }

  @Test
  void saysWhatIsWrongFirst() throws Exception {
    assertThat(explained("C5"))
        .startsWith(
            """
            What is wrong:
            LAB_READING: division is -1; it must be a number greater than zero.

            What to do:
            """);
  }

  @Test
  void explainsAnOrdinaryFormulaAndAnEmptyCell() throws Exception {
    assertThat(explained("B4")).contains("In words:\nB4 is B2 (rim mass / kg, value) times");
    assertThat(explained("F9")).isEqualTo("In words:\nF9 is empty.");
  }

  @Test
  void tellsANumberThatIsTextInItsCellAndInAFormulaThatPassesItOver() throws Exception {
    workbook.type("B5", "0,318 m").set("B6", "=AVERAGE(B3;B5)");
    String said =
        "which looks like a number but is a text: no formula calculates with it. As a number it is"
            + " typed 0.318.";
    assertThat(explained("B5")).startsWith("What is wrong:\nB5 holds \"0,318 m\", " + said);
    assertThat(explained("B6")).startsWith("What is wrong:\nB5 (value) holds \"0,318 m\", " + said);
  }

  @Test
  void namesEveryControlOfItsWindowForScreenReaders() throws Exception {
    workbook.select("C4").choose("tenthmark:explain");
    WindowOnScreen window = WindowOnScreen.await(office, "Explain cell C4");
    assertThat(window.controls())
        .contains("The formula:", "In words:", "What makes up the uncertainty (LAB_CARRY):");
    assertThat(window.buttons()).containsExactly("Explain the selected cell", "Help", "Close");
    window.press("Close");
    window.awaitEnd();
  }

  private String explained(String cell) throws Exception {
    var result = workbook.select(cell).dispatch("tenthmark:explain");
    assertThat(result.State).isEqualTo(DispatchResultState.SUCCESS);
    return (String) result.Result;
  }
}
