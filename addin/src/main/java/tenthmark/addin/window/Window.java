package tenthmark.addin.window;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XControlModel;
import com.sun.star.awt.XDialog;
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
import java.util.List;
import tenthmark.addin.menu.Workplace;

/**
 * A window over the spreadsheet. Controls are reached with the Tab key in the order in which they
 * are added; a label belongs to the control that is added after it, and names it.
 */
public final class Window implements AutoCloseable {

  private final Workplace workplace;
  private final XControl dialog;
  private final XNameContainer models;

  /** An empty window, not shown yet. */
  public Window(Workplace workplace, String title, int width, int height) throws Exception {
    this.workplace = workplace;
    XControlModel model =
        workplace.service(XControlModel.class, "com.sun.star.awt.UnoControlDialogModel");
    this.models = queryInterface(XNameContainer.class, model);
    place(queryInterface(XPropertySet.class, model), new Place(60, 40, width, height));
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
    Object model = add("FixedText", name, place);
    set(model, "Label", text);
    set(model, "MultiLine", true);
    return this;
  }

  /** Adds a text of several lines that can be read and copied, not changed. */
  public Window text(String name, String text, Place place) throws Exception {
    Object model = add("Edit", name, place);
    set(model, "MultiLine", true);
    set(model, "ReadOnly", true);
    set(model, "VScroll", true);
    set(model, "Text", text);
    return this;
  }

  /** Adds a list of which one line is chosen. */
  public Window list(String name, List<String> lines, Place place, Choice choice) throws Exception {
    Object model = add("ListBox", name, place);
    set(model, "StringItemList", lines.toArray(String[]::new));
    queryInterface(XListBox.class, control(name))
        .addItemListener(new Listeners.OfItems(event -> run(() -> choice.choose(event.Selected))));
    return this;
  }

  /** Adds a button that does something. */
  public Window button(String name, String text, Place place, Action action) throws Exception {
    set(add("Button", name, place), "Label", text);
    queryInterface(XButton.class, control(name))
        .addActionListener(new Listeners.OfActions(event -> run(action)));
    return this;
  }

  /** Adds a button that ends a window which waits for its user. */
  public Window cancelButton(String name, String text, Place place) throws Exception {
    Object model = add("Button", name, place);
    set(model, "Label", text);
    set(model, "PushButtonType", (short) PushButtonType.CANCEL_value);
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

  /** Puts the keyboard into a control. */
  public void focus(String name) {
    queryInterface(XWindow.class, control(name)).setFocus();
  }

  /** Shows the window beside the spreadsheet, which can be worked in meanwhile. */
  public void show() {
    XTopWindow top = queryInterface(XTopWindow.class, dialog);
    top.addTopWindowListener(new Listeners.OfClosing(event -> close()));
    queryInterface(XComponent.class, workplace.frame())
        .addEventListener(new Listeners.OfEnd(event -> close()));
    queryInterface(XWindow.class, dialog).setVisible(true);
  }

  /** The window as one that the user must end before going on. */
  XDialog dialog() {
    return queryInterface(XDialog.class, dialog);
  }

  private void run(Action action) {
    workplace.attempt(action::run);
  }

  private XControl control(String name) {
    return queryInterface(XControlContainer.class, dialog).getControl(name);
  }

  private Object add(String kind, String name, Place place) throws Exception {
    Object model =
        queryInterface(XMultiServiceFactory.class, models)
            .createInstance("com.sun.star.awt.UnoControl" + kind + "Model");
    place(queryInterface(XPropertySet.class, model), place);
    set(model, "TabIndex", (short) models.getElementNames().length);
    models.insertByName(name, model);
    return model;
  }

  private static void place(XPropertySet model, Place place) throws Exception {
    model.setPropertyValue("PositionX", place.x());
    model.setPropertyValue("PositionY", place.y());
    model.setPropertyValue("Width", place.width());
    model.setPropertyValue("Height", place.height());
  }

  private static void set(Object model, String property, Object value) throws Exception {
    queryInterface(XPropertySet.class, model).setPropertyValue(property, value);
  }

  @Override
  public void close() {
    dialog.dispose();
  }
}
