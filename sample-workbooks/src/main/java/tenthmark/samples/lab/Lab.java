package tenthmark.samples.lab;

import java.util.List;
import java.util.Locale;
import tenthmark.samples.plan.Copy;
import tenthmark.samples.plan.Texts;
import tenthmark.samples.plan.WorkbookPlan;

/**
 * A lab of the course.
 *
 * @param file the beginning of its files' names
 * @param plan its workbook
 */
public record Lab(String file, WorkbookPlan plan) {

  /** What a student is told under the title. */
  static final String TASK =
      "Fill in the white cells. Shaded cells are given or calculated, and stay empty until what"
          + " they need is there.";

  /** The name of a copy's files, without their ending. */
  public String fileName(Copy copy) {
    return file + "-" + copy.name().toLowerCase(Locale.ROOT);
  }

  /** What the course expects: a profile for the checker. */
  public String profile() {
    return Texts.read(Lab.class, file + ".yaml");
  }

  /** The page of instructions, in Markdown; its formulas are for the completed copy. */
  public String instructions() {
    return plan.resolvedFor(Texts.read(Lab.class, file + ".md"));
  }

  /** All labs, in the order of the course. */
  public static List<Lab> all() {
    return List.of(
        ReadingsLab.LAB,
        SoftEndsLab.LAB,
        TimingLab.LAB,
        DensityLab.LAB,
        LeverLab.LAB,
        WheelLab.LAB);
  }
}
