package tenthmark.addin.sidebar;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.ActionEvent;
import com.sun.star.awt.ItemEvent;
import com.sun.star.awt.PosSize;
import com.sun.star.awt.Rectangle;
import com.sun.star.awt.WindowEvent;
import com.sun.star.awt.XActionListener;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XFixedText;
import com.sun.star.awt.XItemListener;
import com.sun.star.awt.XListBox;
import com.sun.star.awt.XTextComponent;
import com.sun.star.awt.XWindow;
import com.sun.star.awt.XWindowListener;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XEventListener;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

/** The window of a panel, whose controls are named in its description. */
record PanelWindow(XWindow window) {

  /** Shows the window, with its parts placed by its size, now and whenever that changes. */
  void show(Consumer<Rectangle> then) {
    window.addWindowListener(
        new XWindowListener() {
          @Override
          public void windowResized(WindowEvent event) {
            then.accept(window.getPosSize());
          }

          @Override
          public void windowMoved(WindowEvent event) {}

          @Override
          public void windowShown(EventObject event) {
            then.accept(window.getPosSize());
          }

          @Override
          public void windowHidden(EventObject event) {}

          @Override
          public void disposing(EventObject event) {}
        });
    window.setVisible(true);
    then.accept(window.getPosSize());
  }

  /** Lets something be done when the panel ends. */
  void whenEnded(Runnable then) {
    queryInterface(XComponent.class, window)
        .addEventListener(
            new XEventListener() {
              @Override
              public void disposing(EventObject event) {
                then.run();
              }
            });
  }

  void place(String control, int x, int y, int width, int height) {
    queryInterface(XWindow.class, control(control))
        .setPosSize(x, y, Math.max(1, width), Math.max(1, height), PosSize.POSSIZE);
  }

  void say(String text, String said) {
    queryInterface(XTextComponent.class, control(text)).setText(said);
  }

  void label(String label, String said) {
    queryInterface(XFixedText.class, control(label)).setText(said);
  }

  void button(String button, String title, Runnable then) {
    XButton pressed = queryInterface(XButton.class, control(button));
    pressed.setLabel(title);
    pressed.addActionListener(
        new XActionListener() {
          @Override
          public void actionPerformed(ActionEvent event) {
            then.run();
          }

          @Override
          public void disposing(EventObject event) {}
        });
  }

  void whenChosen(String list, IntConsumer then) {
    queryInterface(XListBox.class, control(list))
        .addItemListener(
            new XItemListener() {
              @Override
              public void itemStateChanged(ItemEvent event) {
                then.accept(event.Selected);
              }

              @Override
              public void disposing(EventObject event) {}
            });
  }

  void lines(String list, List<String> lines) {
    XListBox box = queryInterface(XListBox.class, control(list));
    box.removeItems((short) 0, box.getItemCount());
    box.addItems(lines.toArray(String[]::new), (short) 0);
  }

  private XControl control(String name) {
    return queryInterface(XControlContainer.class, window).getControl(name);
  }
}
