package tenthmark.addin.checking;

import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import java.nio.file.Path;
import java.util.Optional;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.addin.menu.Workplace;
import tenthmark.addin.window.Latest;
import tenthmark.addin.window.Place;
import tenthmark.addin.window.Window;
import tenthmark.measurement.wording.Sentences;

/** The findings as a list beside the spreadsheet; choosing one goes to its cell. */
public final class FindingsWindow {

  private static final String LIST = "findings";
  private static final String DETAILS = "details";

  private final Workplace workplace;
  private final Spreadsheet document;
  private final Sentences texts;
  private final CheckedFile checked;
  private final Window window;

  private FindingsWindow(
      Workplace workplace, CheckedFile checked, Optional<Path> profile, Window.Action help)
      throws Exception {
    this.workplace = workplace;
    this.document = workplace.spreadsheet();
    this.texts = workplace.texts();
    this.checked = checked;
    this.window = new Window(workplace, workplace.title(), 320, 214);
    addFindings(profile);
    addButtons();
    window.onHelp(help);
  }

  /**
   * Shows what was found in a window to a user, instead of those that were shown before, and says
   * them to a program.
   *
   * @param profile the course's profile, if it was found by one
   * @param help what the help key opens
   */
  public static void show(
      Workplace workplace, CheckedFile checked, Optional<Path> profile, Window.Action help)
      throws Exception {
    Latest latest = new Latest(workplace);
    if (workplace.conversation().canShowWindows()) {
      latest.end();
    }
    String read = read(checked.reading(), workplace.texts());
    if (checked.findings().isEmpty()) {
      workplace.conversation().tell(workplace.texts().say("check.nothing") + " " + read);
    } else if (workplace.conversation().canShowWindows()) {
      FindingsWindow shown = new FindingsWindow(workplace, checked, profile, help);
      latest.is(shown.window);
      shown.open();
    } else {
      FindingTexts lines = new FindingTexts(workplace.texts());
      checked
          .findings()
          .forEach(finding -> workplace.conversation().tell(lines.inOneLine(finding)));
      workplace.conversation().tell(read);
    }
  }

  private static String read(CheckedFile.Coverage coverage, Sentences texts) {
    return texts.say(
        "check.read",
        Integer.toString(coverage.records()),
        Integer.toString(coverage.numbersNotRead()));
  }

  private void open() {
    window.show();
    window.choose(LIST, 0);
    window.focus(LIST);
  }

  private void addFindings(Optional<Path> profile) throws Exception {
    FindingTexts lines = new FindingTexts(texts);
    window
        .label("summary", summary(profile), new Place(8, 6, 304, 27))
        .label("list-label", texts.say("check.list"), new Place(8, 36, 304, 9))
        .list(
            LIST,
            checked.findings().stream().map(lines::inOneLine).toList(),
            new Place(8, 46, 304, 80),
            this::choose)
        .label("details-label", texts.say("check.details"), new Place(8, 130, 304, 9))
        .text(DETAILS, "", new Place(8, 140, 304, 50));
  }

  private void addButtons() throws Exception {
    window
        .button("put", texts.say("check.put"), new Place(8, 195, 104, 14), this::putComments)
        .button(
            "remove", texts.say("check.remove"), new Place(116, 195, 104, 14), this::removeComments)
        .button("close", texts.say("window.close"), new Place(252, 195, 60, 14), window::close);
  }

  private String summary(Optional<Path> profile) {
    String count = texts.say("check.count", Integer.toString(checked.findings().size()));
    String course =
        profile
            .map(file -> texts.say("check.profile", file.getFileName().toString()))
            .orElseGet(() -> texts.say("check.no-profile"));
    return String.join(
        " ", count, read(checked.reading(), texts), texts.say("check.caution"), course);
  }

  private void choose(int line) throws Exception {
    Finding finding = checked.findings().get(line);
    window.say(DETAILS, new FindingTexts(texts).inFull(finding));
    XCell cell = new FindingPlaces(workplace).goTo(finding);
    document.bringUp(cell, window.partAbove());
  }

  private void putComments() throws Exception {
    window.say(DETAILS, CellComments.put(workplace, checked.findings()));
  }

  private void removeComments() throws Exception {
    window.say(DETAILS, CellComments.remove(workplace));
  }
}
