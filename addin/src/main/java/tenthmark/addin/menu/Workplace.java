package tenthmark.addin.menu;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.frame.XFrame;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.uno.XComponentContext;
import tenthmark.addin.OfficeLocale;
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
 */
public record Workplace(
    XComponentContext office, XFrame frame, OfficeLocale locale, Conversation conversation) {

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

  /** A service of the office. */
  public <T> T service(Class<T> type, String name) throws com.sun.star.uno.Exception {
    return queryInterface(type, office.getServiceManager().createInstanceWithContext(name, office));
  }
}
