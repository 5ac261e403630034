package tenthmark.addin.sidebar;

import java.nio.file.Path;
import java.util.List;
import tenthmark.addin.checking.CheckedFile;
import tenthmark.addin.checking.Checker;
import tenthmark.addin.checking.FindingPlaces;
import tenthmark.addin.menu.Workplace;

/** What the checker finds in the workbook, with counts; from each finding one goes to its cell. */
final class FindingsPanel {

  private static final String CHECK = "check";
  private static final String SUMMARY = "summary";
  private static final String LIST = "list";
  private static final String DETAILS = "details";
  private static final int MARGIN = 4;
  private static final int BUTTON = 28;
  private static final int LABEL = 64;

  private final PanelWindow window;
  private final Workplace workplace;
  private final Path extension;
  private final FindingPlaces places;
  private List<String> details = List.of();
  private CheckedFile checked;

  private FindingsPanel(PanelWindow window, Workplace workplace, Path extension) {
    this.window = window;
    this.workplace = workplace;
    this.extension = extension;
    this.places = new FindingPlaces(workplace);
  }

  static void fill(PanelWindow window, Workplace workplace, Path extension) {
    FindingsPanel panel = new FindingsPanel(window, workplace, extension);
    window.show(size -> panel.layOut(size.Width, size.Height));
    window.button(CHECK, workplace.title(), panel::check);
    window.label(SUMMARY, workplace.texts().say("sidebar.not-checked"));
    window.whenChosen(LIST, panel::choose);
  }

  private void layOut(int width, int height) {
    int inner = width - 2 * MARGIN;
    int lists = Math.max(60, (height - BUTTON - LABEL - 5 * MARGIN) / 2);
    int top = 2 * MARGIN + BUTTON;
    window.place(CHECK, MARGIN, MARGIN, inner, BUTTON);
    window.place(SUMMARY, MARGIN, top, inner, LABEL);
    window.place(LIST, MARGIN, top + LABEL + MARGIN, inner, lists);
    window.place(DETAILS, MARGIN, top + LABEL + lists + 2 * MARGIN, inner, lists);
  }

  private void check() {
    workplace.attempt(() -> new Checker(workplace, extension).check(this::show));
  }

  private void show(CheckedFile file) {
    checked = file;
    details = places.inFull(file);
    window.label(SUMMARY, places.summary(file, new Checker(workplace, extension).profile()));
    window.lines(LIST, places.inLines(file));
    window.say(DETAILS, "");
  }

  private void choose(int line) {
    if (checked != null && line >= 0 && line < details.size()) {
      window.say(DETAILS, details.get(line));
      workplace.attempt(() -> places.goTo(checked.findings().get(line)));
    }
  }
}
