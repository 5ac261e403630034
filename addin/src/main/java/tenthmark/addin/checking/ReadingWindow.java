package tenthmark.addin.checking;

import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;
import tenthmark.addin.window.Latest;
import tenthmark.addin.window.Place;
import tenthmark.addin.window.Window;
import tenthmark.measurement.wording.Sentences;

/**
 * What the cells of the spreadsheet are taken for, as a list beside it; choosing a line goes to its
 * first cell. No cell is changed or coloured.
 */
public final class ReadingWindow {

  private static final String LIST = "taken";

  private final Spreadsheet document;
  private final Sentences texts;
  private final ReadFile file;
  private final List<ReadFile.Cells> lines;
  private final Window window;

  private ReadingWindow(
      Workplace workplace, ReadFile file, Optional<Path> profile, Window.Action help)
      throws Exception {
    this.document = workplace.spreadsheet();
    this.texts = workplace.texts();
    this.file = file;
    this.lines = lines(file);
    this.window = new Window(workplace, workplace.title(), 320, 170);
    window
        .label("summary", summary(profile), new Place(8, 6, 304, 27))
        .label("list-label", texts.say("reading.list"), new Place(8, 36, 304, 9))
        .list(
            LIST,
            lines.stream().map(cells -> line(cells, texts)).toList(),
            new Place(8, 46, 304, 96),
            this::choose)
        .button("close", texts.say("window.close"), new Place(252, 150, 60, 14), window::close);
    window.onHelp(help);
  }

  /**
   * Shows it in a window to a user, instead of what was shown before, and says it to a program.
   *
   * @param profile the course's profile, if it was read by one
   * @param help what the help key opens
   */
  public static void show(
      Workplace workplace, ReadFile file, Optional<Path> profile, Window.Action help)
      throws Exception {
    Latest latest = new Latest(workplace);
    if (workplace.conversation().canShowWindows()) {
      latest.end();
    }
    if (file.cells().isEmpty()) {
      workplace.conversation().tell(workplace.texts().say("reading.nothing"));
    } else if (workplace.conversation().canShowWindows()) {
      ReadingWindow shown = new ReadingWindow(workplace, file, profile, help);
      latest.is(shown.window);
      shown.window.show();
      shown.window.focus(LIST);
    } else {
      lines(file).forEach(cells -> workplace.conversation().tell(line(cells, workplace.texts())));
    }
  }

  /** What was not read comes first, for that is what somebody has to see to. */
  private static List<ReadFile.Cells> lines(ReadFile file) {
    return file.cells().stream().sorted(Comparator.comparing(ReadFile.Cells::read)).toList();
  }

  private static String line(ReadFile.Cells cells, Sentences texts) {
    return texts.say("reading.line", cells.sheet(), cells.cells(), cells.taken());
  }

  private String summary(Optional<Path> profile) {
    String read =
        texts.say(
            "check.read",
            Integer.toString(file.records()),
            Integer.toString(file.numbersNotRead()));
    String course =
        profile
            .map(path -> texts.say("reading.profile", path.getFileName().toString()))
            .orElseGet(() -> texts.say("reading.no-profile"));
    return String.join(" ", read, course);
  }

  private void choose(int number) throws Exception {
    ReadFile.Cells cells = lines.get(number);
    SheetCells sheet =
        document
            .sheet(cells.sheet())
            .orElseThrow(() -> new RefusalException("check.no-sheet", cells.sheet()));
    XCell cell = sheet.cell(cells.cells().split(":", 2)[0]);
    document.select(cell);
    document.bringUp(cell, window.partAbove());
  }
}
