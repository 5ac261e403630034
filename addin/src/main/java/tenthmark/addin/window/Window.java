package tenthmark.addin.window;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.FontDescriptor;
import com.sun.star.awt.Key;
import com.sun.star.awt.PosSize;
import com.sun.star.awt.Rectangle;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XControlModel;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.awt.XKeyHandler;
import com.sun.star.awt.XListBox;
import com.sun.star.awt.XTextComponent;
import com.sun.star.awt.XToolkit;
import com.sun.star.awt.XTopWindow;
import com.sun.star.awt.XWindow;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameContainer;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.Exception;
import com.sun.star.uno.UnoRuntime;
import java.util.List;
import java.util.Map;
import tenthmark.addin.menu.Workplace;

/**
 * A window over the spreadsheet. Controls are reached with the Tab key in the order in which they
 * are added; a label belongs to the control that is added after it, and names it.
 */
public final class Window implements AutoCloseable {

  /** Where windows appear, from the left of the spreadsheet's. */
  private static final int LEFT = 80;

  /** What stays free below a window: its own frame, and the names of the sheets; in pixels. */
  private static final int BELOW = 60;

  private final Workplace workplace;
  private final XControl dialog;
  private final XNameContainer models;
  private boolean closed;

  /** An empty window, not shown yet. */
  public Window(Workplace workplace, String title, int width, int height) throws Exception {
    this.workplace = workplace;
    XControlModel model =
        workplace.service(XControlModel.class, "com.sun.star.awt.UnoControlDialogModel");
    this.models = queryInterface(XNameContainer.class, model);
    place(model, new Place(LEFT, 0, width, height));
    set(model, "Title", title);
    set(model, "Closeable", true);
    set(model, "Moveable", true);
    this.dialog = workplace.service(XControl.class, "com.sun.star.awt.UnoControlDialog");
    dialog.setModel(model);
    XFrame frame = workplace.frame();
    XWindowPeer parent = queryInterface(XWindowPeer.class, frame.getContainerWindow());
    dialog.createPeer(workplace.service(XToolkit.class, "com.sun.star.awt.Toolkit"), parent);
  }

  /** Adds a text that only tells, or that names the control which is added next. */
  public Window label(String name, String text, Place place) throws Exception {
    add("FixedText", name, place, Map.of("Label", text, "MultiLine", true));
    return this;
  }

  /** Adds a text of several lines that can be read and copied, not changed. */
  public Window text(String name, String text, Place place) throws Exception {
    add(
        "Edit",
        name,
        place,
        Map.of("MultiLine", true, "ReadOnly", true, "VScroll", true, "Text", text));
    return this;
  }

  /** Adds such a text in letters of one width, so that its columns stand below each other. */
  public Window aligned(String name, String text, Place place) throws Exception {
    FontDescriptor font = new FontDescriptor();
    font.Name = "DejaVu Sans Mono;Liberation Mono;Consolas;Menlo;Courier New";
    add(
        "Edit",
        name,
        place,
        Map.of(
            "MultiLine",
            true,
            "ReadOnly",
            true,
            "VScroll",
            true,
            "HScroll",
            true,
            "Text",
            text,
            "FontDescriptor",
            font));
    return this;
  }

  /** Adds a list of which one line is chosen. */
  public Window list(String name, List<String> lines, Place place, Choice choice) throws Exception {
    add("ListBox", name, place, Map.of("StringItemList", lines.toArray(String[]::new)));
    queryInterface(XListBox.class, control(name))
        .addItemListener(new Listeners.OfItems(event -> run(() -> choice.choose(event.Selected))));
    return this;
  }

  /** Adds a button that does something. */
  public Window button(String name, String text, Place place, Action action) throws Exception {
    add("Button", name, place, Map.of("Label", text));
    queryInterface(XButton.class, control(name))
        .addActionListener(new Listeners.OfActions(event -> run(action)));
    return this;
  }

  /** What a button does. */
  @FunctionalInterface
  public interface Action {

    /** Does it. */
    void run() throws Exception;
  }

  /** What is done with the line that is chosen in a list. */
  @FunctionalInterface
  public interface Choice {

    /** Takes the number of the line, from 0. */
    void choose(int line) throws Exception;
  }

  /** Changes what a text says. */
  public void say(String name, String text) throws Exception {
    queryInterface(XTextComponent.class, control(name)).setText(text);
  }

  /** Chooses a line of a list, and does what choosing does. */
  public void choose(String name, int line) {
    queryInterface(XListBox.class, control(name)).selectItemPos((short) line, true);
  }

  /** Lets the key F1 in this window do something instead of opening the office's own help. */
  public void onHelp(Action action) throws Exception {
    XExtendedToolkit toolkit =
        workplace.service(XExtendedToolkit.class, "com.sun.star.awt.Toolkit");
    XKeyHandler help =
        new Listeners.OfKey(
            Key.F1,
            () -> {
              boolean here = UnoRuntime.areSame(toolkit.getActiveTopWindow(), dialog.getPeer());
              if (here) {
                run(action);
              }
              return here;
            });
    toolkit.addKeyHandler(help);
    whenClosed(() -> toolkit.removeKeyHandler(help));
  }

  /** Lets something be done when the window is closed. */
  void whenClosed(Runnable action) {
    queryInterface(XComponent.class, dialog)
        .addEventListener(new Listeners.OfEnd(event -> action.run()));
  }

  /** Puts the keyboard into a control. */
  public void focus(String name) {
    queryInterface(XWindow.class, control(name)).setFocus();
  }

  /** Shows the window beside the spreadsheet, which can be worked in meanwhile. */
  public void show() {
    show(this::close);
  }

  /**
   * Shows the window.
   *
   * @param whenDismissed what is done when the user wants to close it, or the spreadsheet is closed
   */
  void show(Runnable whenDismissed) {
    queryInterface(XTopWindow.class, dialog)
        .addTopWindowListener(new Listeners.OfClosing(event -> whenDismissed.run()));
    queryInterface(XComponent.class, workplace.frame())
        .addEventListener(new Listeners.OfEnd(event -> whenDismissed.run()));
    moveDown();
    queryInterface(XWindow.class, dialog).setVisible(true);
  }

  /** Puts the window at the lower end of the sheet, whose first rows stay in sight then. */
  private void moveDown() {
    Rectangle sheet = workplace.frame().getComponentWindow().getPosSize();
    XWindow window = queryInterface(XWindow.class, dialog);
    Rectangle own = window.getPosSize();
    int top = Math.max(sheet.Y, sheet.Y + sheet.Height - own.Height - BELOW);
    window.setPosSize(own.X, top, 0, 0, PosSize.POS);
  }

  /** Which part of the sheet's height is above the window, from 0 to 1. */
  public double partAbove() {
    Rectangle sheet = workplace.frame().getComponentWindow().getPosSize();
    int top = queryInterface(XWindow.class, dialog).getPosSize().Y;
    return Math.max(0, Math.min(1, (double) (top - sheet.Y) / sheet.Height));
  }

  private void run(Action action) {
    workplace.attempt(action::run);
  }

  private XControl control(String name) {
    return queryInterface(XControlContainer.class, dialog).getControl(name);
  }

  /** Whether a control takes several lines is settled when it comes into the window. */
  private void add(String kind, String name, Place place, Map<String, Object> properties)
      throws Exception {
    Object model =
        queryInterface(XMultiServiceFactory.class, models)
            .createInstance("com.sun.star.awt.UnoControl" + kind + "Model");
    place(model, place);
    set(model, "TabIndex", (short) models.getElementNames().length);
    for (Map.Entry<String, Object> property : properties.entrySet()) {
      set(model, property.getKey(), property.getValue());
    }
    models.insertByName(name, model);
  }

  private static void place(Object model, Place place) throws Exception {
    set(model, "PositionX", place.x());
    set(model, "PositionY", place.y());
    set(model, "Width", place.width());
    set(model, "Height", place.height());
  }

  private static void set(Object model, String property, Object value) throws Exception {
    queryInterface(XPropertySet.class, model).setPropertyValue(property, value);
  }

  @Override
  public void close() {
    if (!closed) {
      closed = true;
      dialog.dispose();
    }
  }
}
