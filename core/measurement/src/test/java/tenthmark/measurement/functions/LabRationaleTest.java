package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.measurement.functions.Calls.row;
import static tenthmark.measurement.functions.Calls.table;
import static tenthmark.measurement.functions.Calls.text;

import java.util.Locale;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LabRationaleTest {

  @Nested
  class Sentences {

    @Test
    void sayWhatEachKindIsDueToAndWhatIsNegligible() {
      assertThat(text("LAB_RATIONALE", LabBudgetTest.foamGrip(), "mm"))
          .isEqualTo(
              "The reading uncertainty is 0.5 mm due to millimetre marks, two ends. The physical"
                  + " uncertainty is 1.5 mm due to soft ends. The instrument uncertainty is"
                  + " negligible. The total is 2 mm, the sum of the contributions.");
    }

    @Test
    void listSeveralContributionsOfOneKind() {
      assertThat(
              text(
                  "LAB_RATIONALE",
                  table(
                      row("timing", "starting the watch.", 0.2),
                      row("repeat", "five turns of the wheel", 0.05),
                      row("timing", "stopping the watch", 0.2),
                      row("timing", null, 0.1)),
                  "s",
                  "quadrature"))
          .isEqualTo(
              "The reading uncertainty is negligible. The physical uncertainty is negligible. The"
                  + " instrument uncertainty is negligible. The uncertainty from repeated readings"
                  + " is 0.05 s due to five turns of the wheel. The timing uncertainty is 0.2 s due"
                  + " to starting the watch, 0.2 s due to stopping the watch and 0.1 s (cause not"
                  + " given). The total is 0.3041 s, the root of the sum of the squared"
                  + " contributions.");
    }

    @Test
    void callZeroNegligibleAndNeedNoUnit() {
      assertThat(
              text(
                  "LAB_RATIONALE",
                  table(row("instrument", "gauge", 0), row("physical", "wear", 0.1))))
          .isEqualTo(
              "The reading uncertainty is negligible. The physical uncertainty is 0.1 due to wear."
                  + " The instrument uncertainty is negligible. The total is 0.1, the sum of the"
                  + " contributions.");
      assertThat(text("LAB_RATIONALE", table(row("reading", "marks", 0)), "mm"))
          .endsWith("The instrument uncertainty is negligible. The total is negligible.");
    }

    @Test
    void keepBracesAndApostrophesOfTheStudent() {
      assertThat(text("LAB_RATIONALE", table(row("reading", "the ruler's {worn} end", 1)), "mm"))
          .contains("due to the ruler's {worn} end.");
    }

    @Test
    void areTheSameOnEveryMachine() {
      Locale before = Locale.getDefault();
      try {
        Locale.setDefault(Locale.GERMANY);
        assertThat(text("LAB_RATIONALE", table(row("reading", "marks", 0.25)), "mm"))
            .startsWith("The reading uncertainty is 0.25 mm due to marks.");
      } finally {
        Locale.setDefault(before);
      }
    }

    @Test
    void shareAPowerOfTenNotationWithRecords() {
      assertThat(text("LAB_RATIONALE", table(row("reading", "marks", 1e300)), "m"))
          .contains("is 1×10^300 m due to marks");
    }
  }

  @Nested
  class BadArguments {

    @Test
    void areExplainedInTheCell() {
      assertThat(text("LAB_RATIONALE", table(row("reading", "marks", -1))))
          .isEqualTo(
              "LAB_RATIONALE: table (row 1, column 3) is -1; it must be a number, zero or"
                  + " greater.");
      assertThat(text("LAB_RATIONALE", table(row("reading", "marks", 1)), "mm", "sum"))
          .contains("combine is the text \"sum\"");
    }

    @Test
    void includeATotalBeyondTheLargestNumber() {
      assertThat(
              text(
                  "LAB_RATIONALE", table(row("reading", "a", 1.7e308), row("reading", "b", 1e308))))
          .contains("The total is 2.7×10^308");
    }
  }
}
