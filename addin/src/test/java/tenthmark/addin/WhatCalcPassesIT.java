package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XMergeable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;

/** What a function sees of cells, told by functions that say in words what they cannot use. */
@ExtendWith(OfficeExtension.class)
class WhatCalcPassesIT {

  private static final int ILLEGAL_ARGUMENT = 502;
  private static final int ILLEGAL_PARAMETER = 504;
  private static final int DIVISION_BY_ZERO = 532;
  private static final int NOT_AVAILABLE = 32767;

  private Workbook workbook;

  @BeforeEach
  void use(Workbook empty) {
    workbook = empty;
  }

  @Nested
  class OfOneCell {

    @Test
    void aNumberADateAndALogicalValueAreNumbers() throws Exception {
      workbook.set("A1", "172.46").set("A2", "=DATE(1900;1;2)").set("A3", "=TRUE()");
      assertThat(shown("RESULT(A1;0.5)")).isEqualTo("172.5 ± 0.5");
      assertThat(shown("RESULT(A2;0.5)")).isEqualTo("3.0 ± 0.5");
      assertThat(shown("RESULT(A3;0.5)")).isEqualTo("1.0 ± 0.5");
    }

    @Test
    void aTextIsAText() throws Exception {
      workbook.set("A1", "12 mm");
      assertThat(shown("RESULT(A1;0.5)"))
          .isEqualTo("LAB_RESULT: value is the text \"12 mm\"; it must be a number.");
    }

    @Test
    void anEmptyTextIsBlank() throws Exception {
      workbook.set("A1", "=\"\"");
      assertThat(shown("RESULT(A1;0.5)")).startsWith("LAB_RESULT: value is blank;");
    }

    /** Calc does not tell the function that the cell is blank; nor does it tell its own ones. */
    @Test
    void aBlankCellIsZeroWhereANumberBelongs() throws Exception {
      assertThat(shown("RESULT(A1;0.5)")).isEqualTo("0.0 ± 0.5");
      assertThat(shown("RESULT(A1:A1;0.5)")).startsWith("LAB_RESULT: value is blank;");
    }

    @Test
    void aBlankCellIsBlankWhereATextBelongs() throws Exception {
      assertThat(shown("RESULT(172.46;0.5;A1;;A1)")).isEqualTo("172.5 ± 0.5");
    }

    @Test
    void anArgumentLeftOutIsBlank() throws Exception {
      assertThat(shown("RESULT(;0.5)")).startsWith("LAB_RESULT: value is blank;");
      assertThat(shown("RESULT(172.46;0.5;;2)")).isEqualTo("172.46 ± 0.50");
    }

    @Test
    void anErrorIsPassedOn() throws Exception {
      workbook.set("A1", "=1/0").set("A2", "=NA()");
      assertThat(error("RESULT(A1;0.5)")).isEqualTo(DIVISION_BY_ZERO);
      assertThat(error("RESULT(A2;0.5)")).isEqualTo(NOT_AVAILABLE);
    }

    @Test
    void aMergedAreaIsItsFirstCell() throws Exception {
      workbook.set("A1", 7);
      UnoRuntime.queryInterface(XMergeable.class, workbook.range("A1:B2")).merge(true);
      assertThat(shown("RESULT(A1;0.5)")).isEqualTo("7.0 ± 0.5");
      assertThat(shown("REPEATS(A1:B2)")).isEqualTo("Err:502");
    }
  }

  @Nested
  class OfARange {

    @Test
    void blankCellsAndEmptyTextsAreSkipped() throws Exception {
      workbook.set("A1", 1).set("A3", "=\"\"").set("A5", 2);
      assertThat(shown("TOTAL(A1:A6)")).isEqualTo("3");
    }

    @Test
    void aTextIsRefusedByItsPlace() throws Exception {
      workbook.set("A1", "reading").set("B1", "marks").set("C1", "half");
      assertThat(shown("RATIONALE(A1:C1)"))
          .startsWith("LAB_RATIONALE: table (row 1, column 3) is the text \"half\";");
      assertThat(error("TOTAL(A1:C1)")).isEqualTo(ILLEGAL_ARGUMENT);
    }

    @Test
    void anErrorKeepsCalcFromCallingAtAll() throws Exception {
      workbook.set("A1", 1).set("A2", "=1/0");
      assertThat(error("TOTAL(A1:A2)")).isEqualTo(ILLEGAL_PARAMETER);
    }

    @Test
    void anInlineMatrixIsARange() throws Exception {
      assertThat(shown("TOTAL({1;2|3;4})")).isEqualTo("10");
      assertThat(shown("RATIONALE({\"reading\";\"marks\";\"half\"})"))
          .startsWith("LAB_RATIONALE: table (row 1, column 3) is the text \"half\";");
    }

    @Test
    void aWholeColumnIsARange() throws Exception {
      workbook.set("A1", 1).set("A100000", 2);
      assertThat(shown("TOTAL(A1:A1048576)")).isEqualTo("3");
    }

    @Test
    void aRangeWhereOneCellBelongsIsRefused() throws Exception {
      workbook.set("A1", 1).set("A2", 2);
      assertThat(shown("RESULT(A1:A2;0.5)"))
          .isEqualTo("LAB_RESULT: value is a range of 2 by 1 cells; it must be a number.");
    }

    @Test
    void severalRangesInOneArgumentAreNotPossible() throws Exception {
      assertThat(error("TOTAL(A1:A2~B1:B2)")).isEqualTo(ILLEGAL_PARAMETER);
    }
  }

  @Nested
  class InAMatrixFormula {

    @Test
    void aResultIsReusedForEveryCell() throws Exception {
      workbook.set("A1", 1).set("A2", 2).setMatrix("B1:B2", "=TENTHMARK.LAB.READING(1)*A1:A2");
      assertThat(workbook.values("B1:B2")).isDeepEqualTo(new Object[][] {{0.1}, {0.2}});
    }

    @Test
    void aComputedRangeArrives() throws Exception {
      workbook.set("A1", 1).set("A2", 2).setMatrix("B1", "=TENTHMARK.LAB.TOTAL(A1:A2*2)");
      assertThat(workbook.number("B1")).isEqualTo(6);
    }

    @Test
    void aRangeWhereOneCellBelongsIsRefused() throws Exception {
      workbook.set("A1", 1).set("A2", 2).setMatrix("B1:B2", "=TENTHMARK.LAB.READING(A1:A2)");
      assertThat(workbook.error("B1")).isEqualTo(ILLEGAL_ARGUMENT);
      assertThat(workbook.error("B2")).isEqualTo(ILLEGAL_ARGUMENT);
    }

    @Test
    void aTableOfOneCellOfSentencesLeavesTheRestInError() throws Exception {
      workbook.setMatrix("B1:D3", "=TENTHMARK.LAB.BUDGET(A1:A2)");
      assertThat(workbook.shown("B1")).startsWith("LAB_BUDGET: table is ");
      assertThat(workbook.error("C1")).isEqualTo(NOT_AVAILABLE);
      assertThat(workbook.error("B2")).isEqualTo(NOT_AVAILABLE);
      assertThat(workbook.error("D3")).isEqualTo(NOT_AVAILABLE);
    }
  }

  private String shown(String call) throws Exception {
    return workbook.set("J1", "=TENTHMARK.LAB." + call).shown("J1");
  }

  private int error(String call) throws Exception {
    return workbook.set("J1", "=TENTHMARK.LAB." + call).error("J1");
  }
}
