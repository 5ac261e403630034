package tenthmark.checker.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.formula.CellAddress;

class WorkbookTest {

  private static final CellAddress A1 = new CellAddress("Data", 0, 0);
  private static final CellAddress B1 = new CellAddress("Data", 1, 0);
  private static final CellAddress C1 = new CellAddress("Data", 2, 0);

  @Nested
  class WithOtherContents {

    private final Workbook before =
        Grid.sheet("Data").row(1, 2).andSheet("Further").row(3).workbook();

    @Test
    void changesEmptiesAndFillsCells() {
      Workbook after =
          before.with(
              Map.of(
                  A1, Optional.of(new Content.Number(7)),
                  B1, Optional.empty(),
                  C1, Optional.of(new Content.Text("new"))));

      assertThat(after.at(A1)).contains(new Cell(A1, new Content.Number(7)));
      assertThat(after.at(B1)).isEmpty();
      assertThat(after.at(C1)).contains(new Cell(C1, new Content.Text("new")));
    }

    @Test
    void leavesTheRestAndTheWorkbookItself() {
      Workbook after = before.with(Map.of(A1, Optional.of(new Content.Number(7))));

      assertThat(after.at(B1)).isEqualTo(before.at(B1));
      assertThat(after.sheets().get(1).cells().toList())
          .isEqualTo(before.sheets().get(1).cells().toList());
      assertThat(before.at(A1)).contains(new Cell(A1, new Content.Number(1)));
    }
  }
}
