package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.CellAddress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Patience;
import tenthmark.addin.office.Workbook;

/** Functions follow the convention that stands in the workbook, and at once when it changes. */
@ExtendWith(OfficeExtension.class)
class ConventionIT {

  private static final String READING = "=TENTHMARK.LAB.READING(1;\"fine\";2)";

  private Workbook workbook;

  @BeforeEach
  void use(Workbook empty) throws Exception {
    workbook = empty;
    workbook
        .set("H1", "fine")
        .set("I1", 0.5)
        .set("H2", "combine")
        .set("I2", "quadrature")
        .set("H3", "digits")
        .set("I3", 2)
        .set("H4", "reaction")
        .set("I4", 0.3);
  }

  private void name(String content) throws Exception {
    queryInterface(
            XNamedRanges.class,
            queryInterface(XPropertySet.class, workbook.document()).getPropertyValue("NamedRanges"))
        .addNewByName("LAB_CONVENTION", content, new CellAddress(), 0);
  }

  @Test
  void theyFollowIt() throws Exception {
    name("$Sheet1.$H$1:$I$4");
    workbook
        .set("A1", READING)
        .set("A2", "=TENTHMARK.LAB.TOTAL({3|4})")
        .set("A3", "=TENTHMARK.LAB.HANDTIMED(10)")
        .set("A4", "=TENTHMARK.LAB.RESULT(172.5;0.314;\"mm\")")
        .set("A5", "=TENTHMARK.LAB.READING(1;0.1;2)");

    assertThat(workbook.number("A1")).isEqualTo(1);
    assertThat(workbook.number("A2")).isEqualTo(5);
    assertThat(workbook.number("A3")).isCloseTo(0.03, within(1e-15));
    assertThat(workbook.shown("A4")).isEqualTo("172.50 ± 0.31 mm");
    assertThat(workbook.number("A5")).isEqualTo(0.2);
  }

  @Test
  void theyFollowItsChangeWithoutBeingTouched() throws Exception {
    name("$Sheet1.$H$1:$I$4");
    workbook.set("A1", READING).set("A2", "=A1*2");
    assertThat(workbook.number("A2")).isEqualTo(2);

    workbook.set("I1", 0.25);

    Patience.until(
        "the new convention in both cells",
        () -> workbook.number("A1") == 0.5 && workbook.number("A2") == 1);
  }

  @Test
  void theySayWhatCannotBeReadInIt() throws Exception {
    name("$Sheet1.$H$1:$I$4");
    workbook.set("I1", 5).set("A1", READING).set("A2", "=TENTHMARK.LAB.WHY(A1)");

    assertThat(workbook.error("A1")).isNotZero();
    assertThat(workbook.shown("A2"))
        .contains("LAB_CONVENTION, fine is 5; it must be a number greater than 0 and at most 1.");
  }

  @Test
  void withoutItBenchHolds() throws Exception {
    assertThat(workbook.set("A1", READING).number("A1")).isEqualTo(0.5);
  }
}
