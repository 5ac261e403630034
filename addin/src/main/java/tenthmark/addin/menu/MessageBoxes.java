package tenthmark.addin.menu;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.MessageBoxButtons;
import com.sun.star.awt.MessageBoxResults;
import com.sun.star.awt.MessageBoxType;
import com.sun.star.awt.XMessageBox;
import com.sun.star.awt.XMessageBoxFactory;
import com.sun.star.awt.XToolkit;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.XComponent;

/** A conversation in the office's message boxes. */
final class MessageBoxes implements Conversation {

  private static final String TITLE = "Tenthmark";

  private final XWindowPeer window;

  MessageBoxes(XFrame frame) {
    this.window = queryInterface(XWindowPeer.class, frame.getContainerWindow());
  }

  @Override
  public void tell(String sentence) {
    show(MessageBoxType.INFOBOX, MessageBoxButtons.BUTTONS_OK, sentence);
  }

  @Override
  public void warn(String sentence) {
    show(MessageBoxType.WARNINGBOX, MessageBoxButtons.BUTTONS_OK, sentence);
  }

  @Override
  public boolean confirm(String question) {
    return show(
            MessageBoxType.QUERYBOX,
            MessageBoxButtons.BUTTONS_YES_NO | MessageBoxButtons.DEFAULT_BUTTON_NO,
            question)
        == MessageBoxResults.YES;
  }

  private short show(MessageBoxType type, int buttons, String text) {
    XToolkit toolkit = window.getToolkit();
    XMessageBox box =
        queryInterface(XMessageBoxFactory.class, toolkit)
            .createMessageBox(window, type, buttons, TITLE, text);
    try {
      return box.execute();
    } finally {
      queryInterface(XComponent.class, box).dispose();
    }
  }

  @Override
  public boolean canShowWindows() {
    return true;
  }
}
