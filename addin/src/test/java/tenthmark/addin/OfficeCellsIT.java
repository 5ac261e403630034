package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.NamedFormula;
import tenthmark.measurement.formula.SheetSize;

@ExtendWith(OfficeExtension.class)
class OfficeCellsIT {

  private static final String FIRST = "Sheet1";

  private Workbook workbook;
  private Cells cells;

  @BeforeEach
  void fill(Workbook empty) throws Exception {
    workbook = empty.addSheet("Other data");
    cells = block("A1").cells();
  }

  @Nested
  class Contents {

    @BeforeEach
    void fill() throws Exception {
      workbook.set("A1", 0.1 + 0.2).set("B1", "two").set("A2", "=A1*$'Other data'.B2");
      queryInterface(XText.class, workbook.range("B2").getCellByPosition(0, 0)).setString("=A1");
      workbook.set("C2", "=\"\"").set("A3", "=1/0").set("B3", "=FORMULA(B3)");
    }

    private final List<List<CellContent>> expected =
        List.of(
            List.of(
                new CellContent.Number(0.1 + 0.2),
                new CellContent.Text("two"),
                new CellContent.Empty()),
            List.of(
                new CellContent.Formula("=A1*$'Other data'.B2"),
                new CellContent.Text("=A1"),
                new CellContent.Formula("=\"\"")),
            List.of(
                new CellContent.Formula("=1/0"),
                new CellContent.Formula("=FORMULA(B3)"),
                new CellContent.Empty()));

    @Test
    void areReadOneByOne() {
      for (int row = 0; row < 3; row++) {
        for (int column = 0; column < 3; column++) {
          assertThat(cells.at(new CellAddress(FIRST, column, row)))
              .isEqualTo(expected.get(row).get(column));
        }
      }
    }

    @Test
    void areReadInOneGo() {
      assertThat(cells.rows(new CellRange(FIRST, 0, 0, 2, 2))).isEqualTo(expected);
    }

    @Test
    void areTheSameInARangeThatWasGiven() throws Exception {
      CellBlock all = block("A1:C3");
      assertThat(all.cells().rows(all.range())).isEqualTo(expected);
      CellBlock text = block("B2");
      assertThat(text.cells().at(text.range().first())).isEqualTo(new CellContent.Text("=A1"));
    }

    @Test
    void ofAWholeColumnEndWhereTheSheetDoes() {
      assertThat(cells.rows(new CellRange(FIRST, 1, 0, 1, 1_048_575)))
          .isEqualTo(expected.stream().map(row -> List.of(row.get(1))).toList());
      assertThat(cells.rows(new CellRange(FIRST, 1, 10, 1, 1_048_575))).isEmpty();
    }

    @Test
    void outsideTheSheetsAreEmpty() {
      assertThat(cells.at(new CellAddress("No such sheet", 0, 0)))
          .isEqualTo(new CellContent.Empty());
      assertThat(cells.at(new CellAddress(FIRST, 1_000_000, 0))).isEqualTo(new CellContent.Empty());
    }

    @Test
    void areNeverOld() throws Exception {
      CellAddress address = new CellAddress(FIRST, 0, 0);
      assertThat(cells.at(address)).isEqualTo(new CellContent.Number(0.1 + 0.2));
      workbook.set("A1", "=5");
      assertThat(cells.at(address)).isEqualTo(new CellContent.Formula("=5"));
    }
  }

  @Nested
  class ShownValues {

    @Test
    void areNumbersTextsErrorsOrNothing() throws Exception {
      workbook.set("A1", "=SQRT(2)").set("A2", "=\"2\"").set("A3", "=1/0").set("A4", "=\"\"");
      assertThat(cells.shown(new CellAddress(FIRST, 0, 0)))
          .contains(new CellContent.Number(Math.sqrt(2)));
      assertThat(cells.shown(new CellAddress(FIRST, 0, 1))).contains(new CellContent.Text("2"));
      assertThat(cells.shown(new CellAddress(FIRST, 0, 2)))
          .contains(new CellContent.Fault("#DIV/0!"));
      assertThat(cells.shown(new CellAddress(FIRST, 0, 3))).contains(new CellContent.Empty());
    }
  }

  @Nested
  class Names {

    @Test
    void areLookedUpInTheSheetFirst() throws Exception {
      name(workbook.document(), "length", "$'Other data'.$A$1:$B$2");
      name(workbook.range("A1"), "width", "$Sheet1.$C$3");
      assertThat(cells.named("length", FIRST)).contains(formula("$'Other data'.$A$1:$B$2"));
      assertThat(cells.named("LENGTH", FIRST)).isPresent();
      assertThat(cells.named("width", FIRST)).contains(formula("$Sheet1.$C$3"));
      assertThat(cells.named("width", "Other data")).isEmpty();
      assertThat(cells.named("height", FIRST)).isEmpty();
    }

    @Test
    void areFormulas() throws Exception {
      name(workbook.document(), "twice", "2*$Sheet1.$A$1");
      name(workbook.document(), "gee", "9.81");
      assertThat(cells.named("twice", FIRST)).contains(formula("2*$Sheet1.$A$1"));
      assertThat(cells.named("gee", FIRST)).contains(formula("9.81"));
    }

    private NamedFormula formula(String text) {
      return new NamedFormula(text, new CellAddress(FIRST, 0, 0), SheetSize.LARGE);
    }

    private void name(Object owner, String name, String content) throws Exception {
      Object holder =
          owner instanceof XCellRange range
              ? queryInterface(com.sun.star.sheet.XSheetCellRange.class, range).getSpreadsheet()
              : owner;
      queryInterface(
              XNamedRanges.class,
              queryInterface(XPropertySet.class, holder).getPropertyValue("NamedRanges"))
          .addNewByName(name, content, new com.sun.star.table.CellAddress(), 0);
    }
  }

  @Test
  void aRangeKnowsItsSheetAndItsPlace() throws Exception {
    assertThat(block("Other data.B2:C5").range())
        .isEqualTo(new CellRange("Other data", 1, 1, 2, 4));
  }

  private CellBlock block(String address) throws Exception {
    OpenDocument document =
        OpenDocument.of(queryInterface(XPropertySet.class, workbook.document()));
    return new OfficeCells(document).block(workbook.range(address));
  }
}
