package tenthmark.addin.explaining;

import com.sun.star.uno.Exception;
import java.util.List;
import java.util.stream.Collectors;
import tenthmark.addin.menu.Workplace;
import tenthmark.addin.window.Place;
import tenthmark.addin.window.Window;
import tenthmark.measurement.explanation.Explanation;
import tenthmark.measurement.wording.Sentences;

/** The window beside the spreadsheet that shows the explanation of one cell. */
public final class ExplanationWindow {

  private static final int WIDTH = 400;
  private static final int MARGIN = 8;
  private static final int INNER = WIDTH - 2 * MARGIN;
  private static final int LINE = 9;
  private static final int GAP = 4;
  private static final int FRAME = 6;
  private static final int BUTTON = 15;

  private final Workplace workplace;
  private final Sentences texts;
  private final Actions actions;

  /** What its buttons do. */
  public interface Actions {

    /** Explains the cell that is selected by then. */
    void again() throws Exception;

    /** Opens the help about what is explained. */
    void help() throws Exception;
  }

  /** A window over a spreadsheet. */
  public ExplanationWindow(Workplace workplace, Actions actions) {
    this.workplace = workplace;
    this.texts = workplace.texts();
    this.actions = actions;
  }

  /** Shows an explanation, or says it where nobody looks at windows. */
  public void show(Explanation explanation) throws Exception {
    List<Section> sections = Section.of(explanation, texts);
    if (workplace.conversation().canShowWindows()) {
      open(explanation.cell(), sections);
    } else {
      workplace
          .conversation()
          .tell(sections.stream().map(Section::paragraph).collect(Collectors.joining("\n\n")));
    }
  }

  private void open(String cell, List<Section> sections) throws Exception {
    int height = sections.stream().mapToInt(ExplanationWindow::height).sum();
    Window window =
        new Window(
            workplace, texts.say("explain.title", cell), WIDTH, MARGIN + height + BUTTON + MARGIN);
    int y = MARGIN;
    for (Section section : sections) {
      add(section, window, y);
      y += height(section);
    }
    addButtons(window, y);
    window.onHelp(actions::help);
    window.focus(sections.get(0).name());
    window.show();
  }

  private static void add(Section section, Window window, int y) throws Exception {
    Place label = new Place(MARGIN, y, INNER, LINE);
    Place text = new Place(MARGIN, y + LINE + 1, INNER, section.lines() * LINE + FRAME);
    window.label(section.name() + "-label", section.heading(), label);
    if (section.aligned()) {
      window.aligned(section.name(), section.text(), text);
    } else {
      window.text(section.name(), section.text(), text);
    }
  }

  private static int height(Section section) {
    return LINE + 1 + section.lines() * LINE + FRAME + GAP;
  }

  private void addButtons(Window window, int y) throws Exception {
    int width = (INNER - 2 * MARGIN) / 3;
    window.button(
        "again",
        texts.say("explain.again"),
        new Place(MARGIN, y, width, BUTTON),
        () -> {
          window.close();
          actions.again();
        });
    window.button(
        "help",
        texts.say("explain.help"),
        new Place(2 * MARGIN + width, y, width, BUTTON),
        actions::help);
    window.button(
        "close",
        texts.say("window.close"),
        new Place(3 * MARGIN + 2 * width, y, width, BUTTON),
        window::close);
  }
}
