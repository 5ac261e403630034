package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.Exception;
import java.util.Optional;
import tenthmark.addin.OfficeCells;
import tenthmark.addin.explaining.ExplanationWindow;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.explanation.Explainer;
import tenthmark.measurement.explanation.Explanation;
import tenthmark.measurement.formula.CellAddress;

/** Explains the selected cell: its formula in words, its contributions, and its error. */
@AutoService(Command.class)
public final class ExplainCell implements Command {

  private final Explainer explainer = new Explainer(Catalogue.load());

  @Override
  public String name() {
    return "explain";
  }

  @Override
  public void run(Workplace workplace) throws Exception {
    Explanation explanation = explanation(workplace);
    ExplanationWindow.Actions actions =
        new ExplanationWindow.Actions() {
          @Override
          public void again() throws Exception {
            run(workplace);
          }

          @Override
          public void help() throws Exception {
            OpenReference.open(workplace, section(explanation));
          }
        };
    new ExplanationWindow(workplace, actions).show(explanation);
  }

  /** The function that is explained, else what errors mean. */
  private static Optional<String> section(Explanation explanation) {
    return explanation.function().or(() -> explanation.problem().map(problem -> "errors"));
  }

  private Explanation explanation(Workplace workplace) {
    CellRangeAddress selected =
        workplace.spreadsheet().selection().orElseThrow(() -> new RefusalException("cells.none"));
    OfficeCells cells = OfficeCells.of(workplace.frame().getController().getModel());
    CellAddress cell = cells.first(selected);
    return explainer.explain(cells, cell, workplace.texts()).withFormula(cells.localFormula(cell));
  }
}
