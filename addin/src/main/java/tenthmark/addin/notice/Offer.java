package tenthmark.addin.notice;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.XWindow2;
import com.sun.star.beans.StringPair;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.DocumentEvent;
import com.sun.star.document.XDocumentEventListener;
import com.sun.star.frame.InfobarType;
import com.sun.star.frame.XController;
import com.sun.star.frame.XInfobarProvider;
import com.sun.star.frame.XModel;
import com.sun.star.frame.theGlobalEventBroadcaster;
import com.sun.star.lang.EventObject;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import java.util.HashSet;
import java.util.Set;
import tenthmark.addin.OfficeLocale;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.addin.wording.DialogTexts;
import tenthmark.measurement.wording.Sentences;

/**
 * Offers a notice, above the sheet, when a workbook that uses the functions and has none is saved:
 * once for each document as long as the office runs.
 */
public final class Offer implements XDocumentEventListener {

  private static final Set<String> SAVED = Set.of("OnSaveDone", "OnSaveAsDone");
  private static final String BAR = "tenthmark.notice";
  private static final String COMMAND = "tenthmark:add-notice";

  private final XComponentContext office;
  private final Set<String> made = new HashSet<>();

  private Offer(XComponentContext office) {
    this.office = office;
  }

  /** Begins to make offers in an office. */
  public static void begin(XComponentContext office) {
    theGlobalEventBroadcaster.get(office).addDocumentEventListener(new Offer(office));
  }

  /** Takes the offer back that a window shows. */
  public static void end(XController window) throws Exception {
    XInfobarProvider bars = queryInterface(XInfobarProvider.class, window);
    if (bars.hasInfobar(BAR)) {
      bars.removeInfobar(BAR);
    }
  }

  @Override
  public void documentEventOccured(DocumentEvent event) {
    if (!SAVED.contains(event.EventName)
        || queryInterface(XSpreadsheetDocument.class, event.Source) == null) {
      return;
    }
    try {
      XController window = queryInterface(XModel.class, event.Source).getCurrentController();
      if (window != null && isShown(window)) {
        make(window);
      }
    } catch (Exception failure) {
      throw new IllegalStateException(failure);
    }
  }

  /** Nothing can be shown in the window of a document that a program has opened hidden. */
  private static boolean isShown(XController window) {
    return queryInterface(XWindow2.class, window.getFrame().getContainerWindow()).isVisible();
  }

  private void make(XController window) throws Exception {
    String identity =
        (String)
            queryInterface(XPropertySet.class, window.getModel()).getPropertyValue("RuntimeUID");
    Notice notice = new Notice(new Spreadsheet(window));
    if (made.contains(identity) || notice.firstSheetInNeed().isEmpty() || notice.isThere()) {
      return;
    }
    made.add(identity);
    XInfobarProvider bars = queryInterface(XInfobarProvider.class, window);
    if (!bars.hasInfobar(BAR)) {
      Sentences texts = DialogTexts.in(OfficeLocale.of(office));
      bars.appendInfobar(
          BAR,
          texts.say("notice.offer.what"),
          texts.say("notice.offer.why"),
          InfobarType.INFO,
          new StringPair[] {new StringPair(texts.say("notice.offer.add"), COMMAND)},
          true);
    }
  }

  @Override
  public void disposing(EventObject source) {}
}
