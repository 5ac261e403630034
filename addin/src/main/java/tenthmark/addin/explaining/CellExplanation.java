package tenthmark.addin.explaining;

import com.sun.star.table.CellRangeAddress;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tenthmark.addin.OfficeCells;
import tenthmark.addin.menu.Workplace;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.explanation.Contributions;
import tenthmark.measurement.explanation.Explainer;
import tenthmark.measurement.explanation.Explanation;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Sentences;

/** The explanation of a cell as one text for a narrow column, with contributions as bars. */
public final class CellExplanation {

  private static final int LONGEST_BAR = 20;
  private static final String BAR = "\u2587";

  private final Explainer explainer = new Explainer(Catalogue.load());

  /** That of the first selected cell. */
  public String ofSelected(Workplace workplace) {
    Sentences texts = workplace.texts();
    Optional<CellRangeAddress> selected = workplace.spreadsheet().selection();
    if (selected.isEmpty()) {
      return texts.say("cells.none");
    }
    OfficeCells cells = OfficeCells.of(workplace.spreadsheet().model());
    CellAddress cell = cells.first(selected.get());
    Explanation explanation =
        explainer.explain(cells, cell, texts).withFormula(cells.localFormula(cell));
    return Section.of(explanation, texts).stream()
        .map(section -> paragraph(section, explanation))
        .collect(Collectors.joining("\n\n"));
  }

  private static String paragraph(Section section, Explanation explanation) {
    return section.aligned()
        ? section.heading()
            + "\n"
            + explanation.contributions().map(CellExplanation::bars).orElse("")
        : section.paragraph();
  }

  /** What each contributes, and its share of the total as a bar. */
  static String bars(Contributions table) {
    return table.rows().stream().map(CellExplanation::bar).collect(Collectors.joining("\n"));
  }

  private static String bar(List<String> row) {
    String share = row.get(row.size() - 1);
    String size = row.get(row.size() - 2);
    int length = (int) Math.round(percent(share) * LONGEST_BAR / 100);
    return row.get(0) + ": " + size + "\n" + BAR.repeat(Math.max(0, length)) + " " + share;
  }

  private static double percent(String share) {
    String number = share.replace("%", "").replace(',', '.').strip();
    return number.matches("\\d+(\\.\\d+)?") ? Double.parseDouble(number) : 0;
  }
}
