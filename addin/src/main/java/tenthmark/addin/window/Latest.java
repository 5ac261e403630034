package tenthmark.addin.window;

import com.sun.star.document.DocumentEvent;
import com.sun.star.document.XDocumentEventListener;
import com.sun.star.frame.XGlobalEventBroadcaster;
import com.sun.star.frame.XModel;
import com.sun.star.frame.theGlobalEventBroadcaster;
import com.sun.star.uno.Exception;
import com.sun.star.uno.UnoRuntime;
import tenthmark.addin.menu.Workplace;

/**
 * Lets a document have one window of a kind, the latest. A window learns that it is outdated by an
 * event of the office, since one run of a command knows nothing of the next.
 */
public final class Latest {

  private final XGlobalEventBroadcaster events;
  private final DocumentEvent outdated = new DocumentEvent();

  /** The latest window of a command. */
  public Latest(Workplace workplace) throws Exception {
    XModel document = workplace.frame().getController().getModel();
    this.events = theGlobalEventBroadcaster.get(workplace.office());
    outdated.Source = document;
    outdated.EventName = "tenthmark:" + workplace.command();
  }

  /** Closes the window that is there. */
  public void end() {
    events.documentEventOccured(outdated);
  }

  /** Makes a window the one that the next end closes. */
  public void is(Window window) {
    XDocumentEventListener listener =
        new Listeners.OfDocuments(
            event -> {
              if (event.EventName.equals(outdated.EventName)
                  && UnoRuntime.areSame(event.Source, outdated.Source)) {
                window.close();
              }
            });
    events.addDocumentEventListener(listener);
    window.whenClosed(() -> events.removeDocumentEventListener(listener));
  }
}
