package tenthmark.addin.explaining;

import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.explanation.Contributions;
import tenthmark.measurement.explanation.Explanation;
import tenthmark.measurement.wording.Sentences;

/**
 * A part of an explanation under a heading of its own.
 *
 * @param name of its control
 * @param lines that it needs in the window
 * @param aligned whether it is a table, which needs letters of one width
 */
record Section(String name, String heading, String text, int lines, boolean aligned) {

  private static final int MOST_LINES = 9;

  /** The parts of an explanation; what is wrong comes first, since that is what is asked. */
  static List<Section> of(Explanation explanation, Sentences texts) {
    List<Section> sections = new ArrayList<>();
    explanation
        .problem()
        .ifPresent(
            problem -> {
              sections.add(plain("problem", problem.sentence(), 3, texts));
              sections.add(plain("fix", problem.fix(), 2, texts));
            });
    if (!explanation.formula().isEmpty()) {
      sections.add(plain("formula", explanation.formula(), 2, texts));
    }
    if (!explanation.words().isEmpty()) {
      sections.add(plain("words", String.join("\n", explanation.words()), 5, texts));
    }
    explanation.contributions().ifPresent(table -> sections.add(table(table, texts)));
    return sections;
  }

  private static Section plain(String name, String text, int lines, Sentences texts) {
    return new Section(name, texts.say("explain." + name), text, lines, false);
  }

  private static Section table(Contributions table, Sentences texts) {
    String name = "contributions";
    return new Section(
        name,
        texts.say("explain." + name, table.function()),
        Columns.aligned(table.headings(), table.rows()),
        Math.min(MOST_LINES, table.rows().size() + 3),
        true);
  }

  /** The part as one paragraph. */
  String paragraph() {
    return heading + "\n" + text;
  }
}
