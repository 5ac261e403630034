package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;

@ExtendWith(OfficeExtension.class)
class ReadingIT {

  @Test
  void calculates(Office office) throws Exception {
    try (Workbook workbook = office.create()) {
      workbook.set("A1", "=TENTHMARK.LAB.READING(1;\"fine\";2)").recalculateHard();
      assertThat(workbook.number("A1")).isEqualTo(0.5);
    }
  }
}
