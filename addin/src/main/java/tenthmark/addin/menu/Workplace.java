package tenthmark.addin.menu;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.XRequestCallback;
import com.sun.star.frame.XFrame;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.uno.Any;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import java.io.IOException;
import tenthmark.addin.OfficeLocale;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.addin.wording.DialogTexts;
import tenthmark.measurement.wording.Sentences;

/**
 * Where a command is run: the window of a spreadsheet, and who is there.
 *
 * @param office gives the office's services
 * @param frame the window
 * @param locale how the office is set up
 * @param conversation with whoever chose the command
 * @param command its name
 */
public record Workplace(
    XComponentContext office,
    XFrame frame,
    OfficeLocale locale,
    Conversation conversation,
    String command) {

  /** That of a user who is spoken to in windows. */
  public static Workplace ofUser(XComponentContext office, XFrame frame, String command) {
    return new Workplace(office, frame, OfficeLocale.of(office), new MessageBoxes(frame), command);
  }

  /** A part of a command's work. */
  @FunctionalInterface
  public interface Task {

    /** Does it. */
    void run() throws Exception, IOException;
  }

  /** Whether it was done; what hindered it is said. */
  public boolean attempt(Task task) {
    try {
      task.run();
      return true;
    } catch (RefusalException refusal) {
      conversation.warn(refusal.sentence(texts()));
    } catch (Exception | IOException | RuntimeException failure) {
      conversation.warn(texts().say("failure", title(), failure.toString()));
    }
    return false;
  }

  /** Does it soon, in the office's own thread. */
  public void later(Task task) {
    attempt(
        () ->
            service(XRequestCallback.class, "com.sun.star.awt.AsyncCallback")
                .addCallback(nothing -> attempt(task), Any.VOID));
  }

  /** The title of the command. */
  public String title() {
    return texts().say("menu." + command);
  }

  /** Whether a window shows a spreadsheet in which one can work. */
  static boolean isIn(XFrame frame) {
    return frame != null
        && queryInterface(XSpreadsheetView.class, frame.getController()) != null
        && queryInterface(XSpreadsheetDocument.class, frame.getController().getModel()) != null;
  }

  /** The texts in the language of the office's windows. */
  public Sentences texts() {
    return DialogTexts.in(locale);
  }

  /** The spreadsheet in the window. */
  public Spreadsheet spreadsheet() {
    return new Spreadsheet(frame.getController());
  }

  /** Refuses to go on where the cells of a sheet of the spreadsheet may not be changed. */
  public void refuseUnchangeable(SheetCells sheet) {
    if (spreadsheet().isReadOnly()) {
      throw new RefusalException("document.read-only");
    }
    if (sheet.isProtected()) {
      throw new RefusalException("sheet.protected");
    }
  }

  /** A service of the office. */
  public <T> T service(Class<T> type, String name) throws Exception {
    return queryInterface(type, office.getServiceManager().createInstanceWithContext(name, office));
  }
}
