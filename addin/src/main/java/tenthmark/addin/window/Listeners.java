package tenthmark.addin.window;

import com.sun.star.awt.ActionEvent;
import com.sun.star.awt.ItemEvent;
import com.sun.star.awt.KeyEvent;
import com.sun.star.awt.XActionListener;
import com.sun.star.awt.XItemListener;
import com.sun.star.awt.XKeyHandler;
import com.sun.star.awt.XTopWindowListener;
import com.sun.star.document.DocumentEvent;
import com.sun.star.document.XDocumentEventListener;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XEventListener;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** The office's listeners, as far as they are listened to here. */
final class Listeners {

  private Listeners() {}

  record OfActions(Consumer<ActionEvent> then) implements XActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
      then.accept(event);
    }

    @Override
    public void disposing(EventObject source) {}
  }

  record OfItems(Consumer<ItemEvent> then) implements XItemListener {

    @Override
    public void itemStateChanged(ItemEvent event) {
      then.accept(event);
    }

    @Override
    public void disposing(EventObject source) {}
  }

  /** Takes one key where it is wanted; what is not wanted goes on to the office. */
  record OfKey(short code, BooleanSupplier then) implements XKeyHandler {

    @Override
    public boolean keyPressed(KeyEvent event) {
      return event.KeyCode == code && then.getAsBoolean();
    }

    @Override
    public boolean keyReleased(KeyEvent event) {
      return false;
    }

    @Override
    public void disposing(EventObject source) {}
  }

  record OfDocuments(Consumer<DocumentEvent> then) implements XDocumentEventListener {

    @Override
    public void documentEventOccured(DocumentEvent event) {
      then.accept(event);
    }

    @Override
    public void disposing(EventObject source) {}
  }

  record OfEnd(Consumer<EventObject> then) implements XEventListener {

    @Override
    public void disposing(EventObject source) {
      then.accept(source);
    }
  }

  /** Listens to the wish to close a window. */
  record OfClosing(Consumer<EventObject> then) implements XTopWindowListener {

    @Override
    public void windowClosing(EventObject event) {
      then.accept(event);
    }

    @Override
    public void windowOpened(EventObject event) {}

    @Override
    public void windowClosed(EventObject event) {}

    @Override
    public void windowMinimized(EventObject event) {}

    @Override
    public void windowNormalized(EventObject event) {}

    @Override
    public void windowActivated(EventObject event) {}

    @Override
    public void windowDeactivated(EventObject event) {}

    @Override
    public void disposing(EventObject event) {}
  }
}
