package tenthmark.addin.menu.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;

/** The command that spreads a table over the cells that it takes. Numbers invented. */
@ExtendWith(OfficeExtension.class)
class SpreadTableIT {

  private Workbook workbook;

  @BeforeEach
  void fill(Workbook empty) throws Exception {
    workbook = empty;
    workbook.set("A1", "reading").set("B1", "fine marks").set("C1", 0.5);
    workbook.set("A2", "physical").set("B2", "soft ends").set("C2", 1.5);
    workbook.set("E1", "=TENTHMARK.LAB.BUDGET(A1:C2)");
  }

  @Test
  void showsTheWholeTableInsteadOfItsFirstCell() throws Exception {
    assertThat(workbook.shown("E2")).isEmpty();
    assertThat(spread("E1", DispatchResultState.SUCCESS)).isEmpty();
    assertThat(workbook.shown("E2")).isEqualTo("physical");
    assertThat(workbook.number("G3")).isEqualTo(2);
    assertThat(workbook.formula("H3")).isEqualTo("{=TENTHMARK.LAB.BUDGET(A1:C2)}");
    assertThat(workbook.formula("I3") + workbook.formula("E4")).isEmpty();
  }

  @Test
  void isOneStepToUndo() throws Exception {
    spread("E1", DispatchResultState.SUCCESS);
    assertThat(workbook.undo().getAllUndoActionTitles()[0]).isEqualTo("Spread Table over Cells");
    workbook.undo().undo();
    assertThat(workbook.formula("E1")).isEqualTo("=TENTHMARK.LAB.BUDGET(A1:C2)");
    assertThat(workbook.formula("E2")).isEmpty();
  }

  @Test
  void givesATableThatIsSpreadTheSizeThatItHasNow() throws Exception {
    workbook.set("E1", "").setMatrix("E1:F2", "=TENTHMARK.LAB.BUDGET(A1:C2)");
    spread("F2", DispatchResultState.SUCCESS);
    assertThat(workbook.number("G3")).isEqualTo(2);
  }

  @Test
  void isToldByTheExplanation() throws Exception {
    assertThat(workbook.select("E1").dispatch("tenthmark:explain").Result.toString())
        .contains("The formula gives a table of 3 by 4 cells");
    spread("E1", DispatchResultState.SUCCESS);
    assertThat(workbook.select("E1").dispatch("tenthmark:explain").Result.toString())
        .doesNotContain("The formula gives a table");
  }

  @Test
  void isRefusedWhereSomethingStandsInTheWayOrNoTableIs() throws Exception {
    workbook.set("F3", "mine");
    assertThat(spread("E1", DispatchResultState.FAILURE))
        .startsWith("The table needs the cells E1:H3, and not all of them are empty.");
    assertThat(workbook.formula("E1")).isEqualTo("=TENTHMARK.LAB.BUDGET(A1:C2)");
    assertThat(workbook.shown("F3")).isEqualTo("mine");
    assertThat(spread("C1", DispatchResultState.FAILURE))
        .startsWith("This cell has no LAB function that gives a table");
  }

  private String spread(String cell, short state) throws Exception {
    DispatchResultEvent result = workbook.select(cell).dispatch("tenthmark:spread");
    assertThat(result.State).as((String) result.Result).isEqualTo(state);
    return (String) result.Result;
  }
}
