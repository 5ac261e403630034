package tenthmark.addin.window;

import com.sun.star.awt.ActionEvent;
import com.sun.star.awt.ItemEvent;
import com.sun.star.awt.XActionListener;
import com.sun.star.awt.XItemListener;
import com.sun.star.awt.XTopWindowListener;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XEventListener;
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

  record OfEnd(Consumer<EventObject> then) implements XEventListener {

    @Override
    public void disposing(EventObject source) {
      then.accept(source);
    }
  }

  /** Listens to the wish to close a window. */
  record OfClosing(Consumer<EventObject> then) implements QuietTopWindowListener {

    @Override
    public void windowClosing(EventObject event) {
      then.accept(event);
    }
  }

  /** Listens to a window that appears. */
  record OfOpening(Consumer<EventObject> then) implements QuietTopWindowListener {

    @Override
    public void windowOpened(EventObject event) {
      then.accept(event);
    }
  }

  /** What nobody listens to. */
  interface QuietTopWindowListener extends XTopWindowListener {

    @Override
    default void windowOpened(EventObject event) {}

    @Override
    default void windowClosing(EventObject event) {}

    @Override
    default void windowClosed(EventObject event) {}

    @Override
    default void windowMinimized(EventObject event) {}

    @Override
    default void windowNormalized(EventObject event) {}

    @Override
    default void windowActivated(EventObject event) {}

    @Override
    default void windowDeactivated(EventObject event) {}

    @Override
    default void disposing(EventObject source) {}
  }
}
