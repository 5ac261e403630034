package tenthmark.addin.generator;

import java.util.List;
import java.util.stream.Stream;
import tenthmark.measurement.wording.Sentences;

/**
 * A small calculation in cells that the reference shows step by step, told in one language.
 * Students and numbers are invented; the results are by hand.
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

    /** Whether the cell computes something. */
    public boolean isFormula() {
      return content.startsWith("=");
    }
  }

  /**
   * A cell with what is the same in every language; a text that it shows is among the sentences.
   */
  private record Cell(String place, String content, String shows) {

    static Cell typed(String place, String content) {
      return new Cell(place, content, content);
    }

    static Cell heading(String place) {
      return typed(place, "");
    }

    static Cell sentence(String place, String formula) {
      return new Cell(place, formula, "");
    }

    Step told(String example, Sentences sentences) {
      String key = example + "." + place;
      String text = sentences.knows(key + ".shows") ? sentences.say(key + ".shows") : "";
      return new Step(
          place,
          content.isEmpty() ? text : sentences.decimalSign().write(content),
          shows.isEmpty() ? text : sentences.decimalSign().write(shows),
          sentences.knows(key) ? sentences.say(key) : "");
    }
  }

  /** All of them, in the order in which a course needs them. */
  public static List<WorkedExample> in(Sentences sentences) {
    return List.of(
        told("length", length(), sentences),
        told("carry", inertia(), sentences),
        told("agree", agreement(), sentences),
        told("line", spring(), sentences),
        told("error", error(), sentences));
  }

  private static WorkedExample told(String name, Stream<Cell> cells, Sentences sentences) {
    String key = "worked." + name;
    return new WorkedExample(
        "example-" + name,
        sentences.say(key + ".title"),
        sentences.say(key + ".story"),
        cells.map(cell -> cell.told(key, sentences)).toList());
  }

  private static Stream<Cell> length() {
    return Stream.of(
        Cell.typed("A1", "128.3"),
        new Cell("A2", "=LAB_READING(1;\"fine\";2)", "0.5"),
        new Cell("A3", "=LAB_FUZZY(1;2)", "1.5"),
        new Cell("A4", "=LAB_TOTAL(A2:A3)", "2"),
        new Cell("A5", "=LAB_RESULT(A1;A4;\"mm\")", "128 ± 2 mm"));
  }

  private static Stream<Cell> inertia() {
    return Stream.of(
        Cell.typed("A1", "0.42"),
        Cell.typed("B1", "0.005"),
        Cell.typed("A2", "0.311"),
        Cell.typed("B2", "0.011"),
        new Cell("A3", "=A1*A2^2", "0.04062"),
        new Cell("B3", "=LAB_CARRY(A3;A1:A2;B1:B2)", "0.00336"),
        new Cell("A4", "=LAB_RESULT(A3;B3;\"kg m²\")", "0.041 ± 0.003 kg m²"));
  }

  private static Stream<Cell> agreement() {
    return Stream.of(
        Cell.typed("A1", "172.6"),
        Cell.typed("B1", "0.5"),
        Cell.typed("A2", "173.3"),
        Cell.typed("B2", "0.5"),
        new Cell("A3", "=LAB_GAP(A1;B1;A2;B2)", "0.7"),
        Cell.sentence("A4", "=LAB_AGREE(A1;B1;A2;B2)"));
  }

  private static Stream<Cell> spring() {
    return Stream.of(
        Cell.typed("A1", "1"),
        Cell.typed("B1", "2"),
        Cell.typed("A2", "2"),
        Cell.typed("B2", "4.1"),
        Cell.typed("A3", "3"),
        Cell.typed("B3", "5.9"),
        new Cell("A4", "=LAB_SLOPE(A1:A3;B1:B3)", "1.95"),
        new Cell("B4", "=LAB_SLOPEERROR(A1:A3;B1:B3)", "0.0866"));
  }

  private static Stream<Cell> error() {
    return Stream.of(
        Cell.heading("A1"),
        Cell.sentence("A3", "=LAB_READING(A2)"),
        Cell.sentence("A4", "=LAB_WHY(A3)"));
  }
}
