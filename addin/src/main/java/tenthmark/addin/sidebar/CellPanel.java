package tenthmark.addin.sidebar;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.lang.EventObject;
import com.sun.star.view.XSelectionChangeListener;
import com.sun.star.view.XSelectionSupplier;
import tenthmark.addin.explaining.CellExplanation;
import tenthmark.addin.menu.Workplace;

/** What the selected cell is and does, what makes it up and what is wrong, as one moves along. */
final class CellPanel implements XSelectionChangeListener {

  private static final String TEXT = "text";
  private static final int MARGIN = 4;

  private final PanelWindow window;
  private final Workplace workplace;
  private final CellExplanation explanation = new CellExplanation();

  private CellPanel(PanelWindow window, Workplace workplace) {
    this.window = window;
    this.workplace = workplace;
  }

  static void fill(PanelWindow window, Workplace workplace) {
    CellPanel panel = new CellPanel(window, workplace);
    window.show(
        size ->
            window.place(TEXT, MARGIN, MARGIN, size.Width - 2 * MARGIN, size.Height - 2 * MARGIN));
    XSelectionSupplier selection =
        queryInterface(XSelectionSupplier.class, workplace.frame().getController());
    selection.addSelectionChangeListener(panel);
    window.whenEnded(() -> selection.removeSelectionChangeListener(panel));
    panel.show();
  }

  private void show() {
    window.say(TEXT, explanation.ofSelected(workplace));
  }

  @Override
  public void selectionChanged(EventObject event) {
    show();
  }

  @Override
  public void disposing(EventObject event) {}
}
