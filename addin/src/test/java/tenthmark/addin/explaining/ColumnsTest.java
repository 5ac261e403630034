package tenthmark.addin.explaining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnsTest {

  @Test
  void standBelowEachOther() {
    assertThat(
            Columns.aligned(
                List.of("input", "value", "share"),
                List.of(
                    List.of("B2 (rim mass)", "0.42", "14.4 %"),
                    List.of("B3", "-10.311", "85.6 %"),
                    List.of("result", "", "100 %"))))
        .isEqualTo(
            """
            input          value    share
            B2 (rim mass)     0.42  14.4 %
            B3             -10.311  85.6 %
            result                   100 %""");
  }
}
