package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellSeries;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;

/**
 * The cost of functions that read formulas, beside one that takes values only, in one run. Time of
 * the processor, since other work on the machine lengthens that by the clock.
 */
@ExtendWith(OfficeExtension.class)
class SpeedIT {

  private static final int ROWS = 20_000;
  private static final int RUNS = 3;

  @Test
  void aCarryByReferenceTakesLessThanEightReadings(Office office) throws Exception {
    try (Workbook reading = sheet(office, "=TENTHMARK.LAB.READING(A1;\"fine\";2)");
        Workbook carry = sheet(office, "=TENTHMARK.LAB.CARRY(F1;A1:E1;$I$1:$M$1)")) {
      Duration readings = Duration.ofDays(1);
      Duration carries = Duration.ofDays(1);
      for (int run = 0; run < RUNS; run++) {
        readings = shorter(readings, recalculation(office, reading));
        carries = shorter(carries, recalculation(office, carry));
      }
      System.out.printf(
          "%d cells in real Calc: LAB_READING %d ms, LAB_CARRY of five inputs %d ms%n",
          ROWS, readings.toMillis(), carries.toMillis());
      assertThat(carries).isLessThan(readings.multipliedBy(8));
    }
  }

  private static Workbook sheet(Office office, String formula) throws Exception {
    Workbook workbook = office.create();
    Object[][] inputs = new Object[ROWS][];
    for (int row = 0; row < ROWS; row++) {
      inputs[row] = new Object[] {1.0 + row % 7, 2 + row % 9 / 10.0, 3.5, 1.25, 0.5 + row % 3};
    }
    queryInterface(XCellRangeData.class, workbook.range("A1:E" + ROWS)).setDataArray(inputs);
    for (String cell : List.of("I1", "J1", "K1", "L1", "M1")) {
      workbook.set(cell, 0.01);
    }
    workbook.set("F1", "=4*PI()^2*A1*B1/C1^2+D1*E1").set("G1", formula);
    queryInterface(XCellSeries.class, workbook.range("F1:G" + ROWS))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
    assertThat(workbook.error("G" + ROWS)).isZero();
    return workbook;
  }

  private static Duration recalculation(Office office, Workbook workbook) {
    Duration before = office.processorTime();
    workbook.recalculateHard();
    return office.processorTime().minus(before);
  }

  private static Duration shorter(Duration one, Duration other) {
    return one.compareTo(other) < 0 ? one : other;
  }
}
