package tenthmark.addin.generator;

import java.util.List;

/**
 * A small calculation in cells that the reference shows step by step. Students and numbers are
 * invented; the results are by hand.
 *
 * @param id the address on the page
 * @param story what is measured and how the numbers come about
 */
public record WorkedExample(String id, String title, String story, List<Step> steps) {

  /**
   * One cell.
   *
   * @param content what is typed in: a number, a text, or a formula with semicolons
   * @param shows what the cell then shows; a number holds to the digits printed
   * @param why what it is, or how the result comes about
   */
  public record Step(String cell, String content, String shows, String why) {

    /** A cell that shows what is typed in. */
    static Step typed(String cell, String content, String why) {
      return new Step(cell, content, content, why);
    }

    /** Whether the cell computes something. */
    public boolean isFormula() {
      return content.startsWith("=");
    }
  }

  /** All of them, in the order in which a course needs them. */
  public static List<WorkedExample> all() {
    return List.of(length(), inertia(), agreement(), spring(), error());
  }

  private static WorkedExample length() {
    return new WorkedExample(
        "example-length",
        "A length read off a rule",
        "A foam grip is measured with a rule that has fine millimetre marks. Both ends are read. The"
            + " soft ends of the grip are fuzzy by 1 mm and 2 mm.",
        List.of(
            Step.typed("A1", "128.3", "the length in mm"),
            new Step("A2", "=LAB_READING(1;\"fine\";2)", "0.5", "1 mm × 1/4 × 2 ends"),
            new Step("A3", "=LAB_FUZZY(1;2)", "1.5", "1/2 mm + 2/2 mm"),
            new Step("A4", "=LAB_TOTAL(A2:A3)", "2", "0.5 mm + 1.5 mm"),
            new Step(
                "A5", "=LAB_RESULT(A1;A4;\"mm\")", "128 ± 2 mm", "rounded to the place of the 2")));
  }

  private static WorkedExample inertia() {
    return new WorkedExample(
        "example-carry",
        "A result calculated from measured values",
        "The moment of inertia of a wheel's rim is its mass times its radius squared. The"
            + " uncertainties are half-widths, so they are carried straight.",
        List.of(
            Step.typed("A1", "0.42", "the mass in kg"),
            Step.typed("B1", "0.005", "its uncertainty"),
            Step.typed("A2", "0.311", "the radius in m"),
            Step.typed("B2", "0.011", "its uncertainty"),
            new Step("A3", "=A1*A2^2", "0.04062", "0.42 kg × (0.311 m)²"),
            new Step(
                "B3",
                "=LAB_CARRY(A3;A1:A2;B1:B2)",
                "0.00336",
                "0.311² × 0.005 + 2 × 0.42 × 0.311 × 0.011"),
            new Step(
                "A4",
                "=LAB_RESULT(A3;B3;\"kg m²\")",
                "0.041 ± 0.003 kg m²",
                "one digit of the uncertainty, the value to the same place")));
  }

  private static WorkedExample agreement() {
    return new WorkedExample(
        "example-agree",
        "Two results compared",
        "Two teams measure the same crank arm.",
        List.of(
            Step.typed("A1", "172.6", "the first length in mm"),
            Step.typed("B1", "0.5", "its uncertainty"),
            Step.typed("A2", "173.3", "the second length"),
            Step.typed("B2", "0.5", "its uncertainty"),
            new Step("A3", "=LAB_GAP(A1;B1;A2;B2)", "0.7", "0.7 mm of the 0.5 mm + 0.5 mm allowed"),
            new Step(
                "A4",
                "=LAB_AGREE(A1;B1;A2;B2)",
                "Agree: the values differ by 0.7, which is 0.7 of the 1 that their uncertainties"
                    + " allow.",
                "the same as a sentence")));
  }

  private static WorkedExample spring() {
    return new WorkedExample(
        "example-line",
        "The slope of a straight line",
        "A spring-loaded brake lever is pulled with known forces; the slope of force against travel"
            + " is its stiffness.",
        List.of(
            Step.typed("A1", "1", "the travel in mm"),
            Step.typed("B1", "2", "the force in N"),
            Step.typed("A2", "2", ""),
            Step.typed("B2", "4.1", ""),
            Step.typed("A3", "3", ""),
            Step.typed("B3", "5.9", ""),
            new Step("A4", "=LAB_SLOPE(A1:A3;B1:B3)", "1.95", "(5.9 N − 2 N) / 2 mm"),
            new Step(
                "B4",
                "=LAB_SLOPEERROR(A1:A3;B1:B3)",
                "0.0866",
                "root of (0.05² + 0.1² + 0.05²) / (3 − 2) / 2")));
  }

  private static WorkedExample error() {
    return new WorkedExample(
        "example-error",
        "A cell that shows an error",
        "The division of a tyre-pressure gauge was not filled in.",
        List.of(
            Step.typed("A1", "division / bar", "a heading"),
            new Step("A3", "=LAB_READING(A2)", "Err:502", "A2 is blank"),
            new Step(
                "A4",
                "=LAB_WHY(A3)",
                "LAB_READING: division is 0; it must be a number greater than zero. Here division is"
                    + " A2 (division / bar), which is blank and counts as 0.",
                "which argument, what was found, what is allowed")));
  }
}
