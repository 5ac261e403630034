package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;

/**
 * Carrying through formulas in a real sheet: whatever is edited, the uncertainty follows. The sheet
 * is a pendulum made of a crank arm, with invented numbers: length, period, and g by way of an
 * intermediate cell on another sheet.
 */
@ExtendWith(OfficeExtension.class)
class CarryingIT {

  private static final String CARRY = "=TENTHMARK.LAB.CARRY(B4;B2:B3;C2:C3)";
  private static final int ILLEGAL_ARGUMENT = 502;
  private static final int CIRCLE = 522;

  private Workbook workbook;

  @BeforeEach
  void fill(Workbook empty) throws Exception {
    workbook = empty.addSheet("Timing");
    workbook.set("B2", 0.172).set("C2", 0.001).set("B3", 8.33).set("C3", 0.04);
    workbook.set("Timing.A1", "=Sheet1.B3/10");
    workbook.set("B4", "=4*PI()^2*B2/$Timing.A1^2").set("C4", CARRY);
  }

  /** By hand: relative uncertainties of a product of powers add. */
  private static double expected(double length, double tenPeriods) {
    double period = tenPeriods / 10;
    double g = 4 * Math.PI * Math.PI * length / (period * period);
    return g * (0.001 / length + 2 * 0.04 / tenPeriods);
  }

  private void assertCarried(double expected) throws Exception {
    assertThat(workbook.error("C4")).isZero();
    assertThat(workbook.number("C4")).isCloseTo(expected, within(1e-13 * expected));
  }

  @Nested
  class FollowsAnEdit {

    @Test
    void ofNothingYet() throws Exception {
      assertCarried(expected(0.172, 8.33));
    }

    @Test
    void ofAnInput() throws Exception {
      workbook.set("B2", 0.25);
      assertCarried(expected(0.25, 8.33));
      workbook.set("B3", 9.99);
      assertCarried(expected(0.25, 9.99));
    }

    @Test
    void ofAnUncertainty() throws Exception {
      workbook.set("C2", 0).set("C3", 0);
      assertThat(workbook.number("C4")).isZero();
    }

    @Test
    void ofAnIntermediateFormula() throws Exception {
      workbook.set("Timing.A1", "=Sheet1.B3/20");
      assertCarried(4 * expected(0.172, 8.33));
    }

    /** The value stays what it was; only the way it is computed changes. */
    @Test
    void ofAnIntermediateFormulaThatKeepsItsValue() throws Exception {
      workbook.set("Timing.A1", "=0.833");
      double g = workbook.number("B4");
      assertCarried(g * 0.001 / 0.172);
    }

    @Test
    void ofTheFormulaItself() throws Exception {
      workbook.set("B4", "=B2*B3");
      assertCarried(8.33 * 0.001 + 0.172 * 0.04);
      workbook.set("B4", "=B2+0*B3");
      assertCarried(0.001);
    }

    @Test
    void ofAConstantThatTheFormulaUses() throws Exception {
      workbook.set("D9", 2).set("B4", "=B2*D9+0*B3");
      assertCarried(0.002);
      workbook.set("D9", 3);
      assertCarried(0.003);
    }

    @Test
    void ofAFormulaIntoANumberAndBack() throws Exception {
      String formula = workbook.formula("B4");
      workbook.set("B4", 9.81);
      assertThat(workbook.error("C4")).isEqualTo(ILLEGAL_ARGUMENT);
      workbook.set("B4", formula);
      assertCarried(expected(0.172, 8.33));
    }

    @Test
    void ofAnInputIntoAFormula() throws Exception {
      workbook.set("D2", 0.1).set("B2", "=D2*2");
      assertCarried(expected(0.2, 8.33));
      workbook.set("D2", 0.15);
      assertCarried(expected(0.3, 8.33));
    }

    @Test
    void ofALongChainOfCells() throws Exception {
      String[][] chain = new String[3000][1];
      for (int row = 0; row < chain.length; row++) {
        chain[row][0] = row == 0 ? "=B2" : "=H" + row + "*1";
      }
      workbook.setAll("H1:H" + chain.length, chain).set("B4", "=H" + chain.length + "+0*B3");
      assertCarried(0.001);
      workbook.set("H1500", "=H1499*3");
      assertCarried(0.003);
    }
  }

  @Nested
  class Names {

    @BeforeEach
    void name() throws Exception {
      name("arm", "$Sheet1.$B$2", "A1");
      name("diam", "2*$Sheet1.$B$2", "A1");
      name("offs", "10+$Sheet1.$B$2", "A1");
      name("gee", "9.81", "A1");
      name("area", "diam^2", "A1");
      name("left", "$Sheet1.A1", "B1");
      name("own", "Sheet1.A1", "B1");
      name("sums", "SUM($Sheet1.B$2:B2)", "C2");
    }

    private void name(String name, String content, String base) throws Exception {
      CellRangeAddress place =
          queryInterface(XCellRangeAddressable.class, workbook.range(base)).getRangeAddress();
      names()
          .addNewByName(
              name, content, new CellAddress(place.Sheet, place.StartColumn, place.StartRow), 0);
    }

    private XNamedRanges names() throws Exception {
      return queryInterface(
          XNamedRanges.class,
          queryInterface(XPropertySet.class, workbook.document()).getPropertyValue("NamedRanges"));
    }

    @Test
    void areFollowedToTheirCells() throws Exception {
      workbook.set("B4", "=arm^2+0*B3");
      assertCarried(2 * 0.172 * 0.001);
      workbook.set("B2", 0.3);
      assertCarried(2 * 0.3 * 0.001);
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=diam | 0.002",
          "=offs | 0.001",
          "=gee*B2 | 0.00981",
          "=area | 0.001376",
          "=SUM(arm;diam) | 0.003"
        })
    void areFormulas(String formula, double carried) throws Exception {
      workbook.set("B4", formula);
      assertCarried(carried);
    }

    /** Values as Calc computes them say which cell is meant. */
    @Test
    void thatAreRelativeMoveWithTheCell() throws Exception {
      workbook.set("A9", 3).set("A10", 5).set("C9", 0.1).set("C10", 0.2);
      workbook.set("B9", "=left^2").set("B10", "=left^2");
      workbook.set("D9", "=TENTHMARK.LAB.CARRY(B9;A9:A9;C9:C9)");
      workbook.set("D10", "=TENTHMARK.LAB.CARRY(B10;A10:A10;C10:C10)");
      assertThat(workbook.number("B10")).isEqualTo(25);
      assertThat(workbook.number("D9")).isCloseTo(0.6, within(1e-14));
      assertThat(workbook.number("D10")).isCloseTo(2, within(1e-14));
      workbook.set("Timing.A9", 7).set("Timing.B9", "=left+own");
      assertThat(workbook.number("Timing.B9")).isEqualTo(3 + 7);
      workbook.set("D9", "=TENTHMARK.LAB.CARRY($Timing.B9;$Timing.A9:A9;C9:C9)");
      assertThat(workbook.number("D9")).isCloseTo(0.1, within(1e-14));
      workbook.set("C3", "=sums").set("D11", "=TENTHMARK.LAB.CARRY(C3;B2:B3;C9:C10)");
      assertThat(workbook.number("C3")).isCloseTo(0.172 + 8.33, within(1e-14));
      assertThat(workbook.number("D11")).isCloseTo(0.1 + 0.2, within(1e-14));
    }

    @Test
    void thatAreDefinedAnewCountAtOnce() throws Exception {
      workbook.set("B4", "=diam");
      assertCarried(0.002);
      queryInterface(XNamedRange.class, names().getByName("diam")).setContent("3*$Sheet1.$B$2");
      assertCarried(0.003);
    }

    /** The tests of the checker read these files, with what Calc computed. */
    @ParameterizedTest
    @CsvSource({"names.ods, calc8", "names.xlsx, Calc MS Excel 2007 XML", "names.xls, MS Excel 97"})
    void areFormulasAfterReloadToo(String file, String filter, Office office) throws Exception {
      workbook.set("B4", "=area+offs").set("E1", "=diam").set("E2", "=offs").set("E3", "=area");
      workbook.set("E4", "=SUM(arm;diam)").set("E5", "=gee*arm").set("E6", "=gee*2");
      for (int row = 1; row <= 5; row++) {
        workbook.set("F" + row, "=TENTHMARK.LAB.CARRY(E" + row + ";$B$2:$B$2;$C$2:$C$2)");
      }
      workbook.set("A9", 3).set("A10", 5).set("C9", 0.1).set("C10", 0.2);
      workbook.set("B9", "=left^2").set("B10", "=left^2").set("E9", "=left+1");
      workbook.set("D9", "=TENTHMARK.LAB.CARRY(B9;A9:A9;C9:C9)");
      workbook.set("D10", "=TENTHMARK.LAB.CARRY(B10;A10:A10;C10:C10)");
      workbook.set("Timing.A9", 7).set("Timing.B9", "=left+own");
      Path saved = workbook.save(file, filter);
      Files.copy(saved, Path.of("target", file), StandardCopyOption.REPLACE_EXISTING);
      try (Workbook reopened = office.open(saved)) {
        assertThat(reopened.number("C4")).isCloseTo(0.001 * (8 * 0.172 + 1), within(1e-14));
      }
    }
  }

  /** Values of Calc beside those of the engine, and derivatives by hand. */
  @Nested
  class ArrayFormulas {

    private void assertSameIn(String cell, String input) throws Exception {
      workbook.setMatrix(
          "K1:P2", "=TENTHMARK.LAB.CARRYTABLE(" + cell + ";" + input + ":" + input + ";C2:C2)");
      assertThat(workbook.error("K1")).isZero();
      double value = workbook.number(cell);
      assertThat(workbook.number("L2")).isCloseTo(value, within(1e-14 * Math.abs(value)));
    }

    @Test
    void ofOneCellAreFollowed() throws Exception {
      workbook.set("E1", 2).set("E2", 3).set("F1", 5).set("F2", 7);
      workbook.setMatrix("G1", "=SUM(E1:E2*F1:F2)");
      assertSameIn("G1", "E2");
      assertThat(workbook.number("N1")).isEqualTo(7);
    }

    @Test
    void ofSeveralCellsAreFollowedInEach() throws Exception {
      workbook.set("E1", 2).set("E2", 3).set("F1", 5).set("F2", 7).set("H1", "=SUM(G1:G2)");
      workbook.setMatrix("G1:G2", "=E1:E2^2*F1:F2");
      assertSameIn("G2", "E2");
      assertThat(workbook.number("N1")).isEqualTo(42);
      assertSameIn("G1", "E1");
      assertThat(workbook.number("N1")).isEqualTo(20);
      assertSameIn("H1", "E2");
      assertThat(workbook.number("N1")).isEqualTo(42);
    }

    /** CONVERT belongs to an extension of the office's own, which gives it a longer name. */
    @ParameterizedTest
    @CsvSource({
      "mm, in, 0.03937007874015748",
      "in, cm, 2.54",
      "C, F, 1.8",
      "F, K, 0.5555555555555556",
      "km/h, kn, 0.5399568034557235",
      "Wh, kJ, 3.6",
      "hr, mn, 60",
      "L, cm3, 1000",
      "hPa, Pa, 100",
      "ga, mT, 0.1"
    })
    void conversionsOfUnitsAreFollowed(String from, String to, double factor) throws Exception {
      workbook.set("E2", 12.3).type("G1", "=CONVERT(E2;\"" + from + "\";\"" + to + "\")");
      assertThat(workbook.error("G1")).isZero();
      assertSameIn("G1", "E2");
      assertThat(workbook.number("N1")).isCloseTo(factor, within(1e-12 * factor));
    }

    @Test
    void unionsAndIntersectionsAreFollowed() throws Exception {
      workbook.set("E1", 2).set("E2", 3).set("F1", 5).set("F2", 7);
      workbook.set("G1", "=SUM(E1:F1~E2)").set("G2", "=SUM(E1:F2!E2:F2)");
      assertSameIn("G1", "E2");
      assertSameIn("G2", "E2");
    }
  }

  @Nested
  class CellsThatOnlyCalcCanCompute {

    @Test
    void areConstantsIfNoInputLiesBehindThem() throws Exception {
      workbook.set("D1", "steel").set("E1", 7.85).set("D2", "brass").set("E2", 8.4);
      workbook.set("D4", "steel").set("D5", "=VLOOKUP(D4;D1:E2;2;0)").set("B4", "=B2*D5+0*B3");
      assertCarried(0.00785);
      workbook.set("D4", "brass");
      assertCarried(0.0084);
    }

    @Test
    void areRefusedIfOneDoes() throws Exception {
      workbook.set("D5", "=VLOOKUP(B2;D1:E2;2)").set("B4", "=B2*D5+B3");
      assertThat(workbook.error("C4")).isNotZero();
    }
  }

  @Nested
  class Circles {

    @Test
    void areErrors() throws Exception {
      workbook.set("B4", "=C4+B2");
      assertThat(workbook.error("C4")).isIn(CIRCLE, ILLEGAL_ARGUMENT);
      workbook.set("B4", "=B2+0*B3");
      assertCarried(0.001);
    }
  }

  @Nested
  class MatrixFormulas {

    @Test
    void showTheWholeTable() throws Exception {
      workbook.setMatrix("E1:J3", "=TENTHMARK.LAB.CARRYTABLE(B4;B2:B3;C2:C3)");
      assertThat(workbook.shown("E1")).isEqualTo("B2");
      assertThat(workbook.shown("E3")).isEqualTo("result");
      assertThat(workbook.number("G3")).isEqualTo(workbook.number("C4"));
      assertThat(workbook.number("F3")).isCloseTo(workbook.number("B4"), within(1e-14));
      workbook.set("B2", 0.25);
      assertThat(workbook.number("F1")).isEqualTo(0.25);
      assertThat(workbook.number("G3")).isCloseTo(expected(0.25, 8.33), within(1e-13));
    }

    @Test
    void holdTheCallInside() throws Exception {
      workbook.setMatrix("E1:E2", "=TENTHMARK.LAB.CARRY(B4;B2:B3;C2:C3)*C2:C3");
      double carried = workbook.number("C4");
      assertThat(workbook.number("E1")).isEqualTo(carried * 0.001);
      assertThat(workbook.number("E2")).isEqualTo(carried * 0.04);
    }

    @Test
    void explainWhatIsWrong() throws Exception {
      workbook.set("B4", 9.81).setMatrix("E1:J3", "=TENTHMARK.LAB.CARRYTABLE(B4;B2:B3;C2:C3)");
      assertThat(workbook.shown("E1"))
          .isEqualTo("LAB_CARRYTABLE: cell B4 holds no formula, so nothing is carried through it.");
    }
  }

  @Nested
  class OtherFunctions {

    @Test
    void followEditsToo() throws Exception {
      workbook
          .setMatrix("E1:F2", "=TENTHMARK.LAB.EXTREMES(B4;B2:B3;C2:C3)")
          .setMatrix("E5:F8", "=TENTHMARK.LAB.SIMULATE(B4;B2:B3;C2:C3;\"rectangular\";20000)")
          .set("B4", "=B2*2+0*B3");
      assertThat(workbook.number("F1")).isCloseTo(0.342, within(1e-15));
      assertThat(workbook.number("F2")).isCloseTo(0.346, within(1e-15));
      assertThat(workbook.number("F5")).isCloseTo(0.344, within(1e-4));
      workbook.set("B2", 1);
      assertThat(workbook.number("F2")).isCloseTo(2.002, within(1e-15));
      assertThat(workbook.number("F6")).isCloseTo(2 * 0.001 / Math.sqrt(3), within(0.02 * 0.001));
    }

    @Test
    void takeATextOfNames() throws Exception {
      workbook.set("A2", "L").set("A3", "T");
      workbook.set("C4", "=TENTHMARK.LAB.CARRYTEXT(\"4*PI()^2*L/(T/10)^2\";A2:A3;B2:B3;C2:C3)");
      assertCarried(expected(0.172, 8.33));
      workbook.set("B2", 0.25);
      assertCarried(expected(0.25, 8.33));
    }
  }

  @Nested
  class AfterReload {

    @ParameterizedTest
    @EnumSource
    void everythingStillFollows(Format format, Office office) throws Exception {
      try (Workbook reopened = office.open(workbook.save("carrying", format))) {
        assertThat(reopened.number("C4")).isCloseTo(expected(0.172, 8.33), within(1e-13));
        reopened.set("B2", 0.25);
        assertThat(reopened.number("C4")).isCloseTo(expected(0.25, 8.33), within(1e-13));
        reopened.set("Timing.A1", "=Sheet1.B3/20");
        assertThat(reopened.number("C4")).isCloseTo(4 * expected(0.25, 8.33), within(1e-12));
        reopened.set("B4", "=B2*B3");
        assertThat(reopened.number("C4")).isCloseTo(8.33 * 0.001 + 0.25 * 0.04, within(1e-15));
        assertThat(reopened.recalculateHard().number("C4"))
            .isCloseTo(8.33 * 0.001 + 0.25 * 0.04, within(1e-15));
      }
    }
  }
}
