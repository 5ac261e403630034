package tenthmark.addin.office;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.accessibility.AccessibleRole;
import com.sun.star.accessibility.AccessibleStateType;
import com.sun.star.accessibility.XAccessible;
import com.sun.star.accessibility.XAccessibleAction;
import com.sun.star.accessibility.XAccessibleContext;
import com.sun.star.accessibility.XAccessibleSelection;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.lang.IndexOutOfBoundsException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A window of ours as a screen reader meets it, which has neither mouse nor eyes. It is looked for
 * anew each time, so that one that was closed and opened again is found.
 */
public final class WindowOnScreen {

  /** What the keyboard gets to; a panel only holds such things together. */
  private static final Set<Short> CONTROLS =
      Set.of(
          AccessibleRole.PUSH_BUTTON,
          AccessibleRole.LIST,
          AccessibleRole.TEXT,
          AccessibleRole.SCROLL_PANE);

  private static final Predicate<XAccessibleContext> CONTROL =
      part -> CONTROLS.contains(part.getAccessibleRole());

  private final XExtendedToolkit toolkit;
  private final String title;

  private WindowOnScreen(XExtendedToolkit toolkit, String title) {
    this.toolkit = toolkit;
    this.title = title;
  }

  /** Waits until a window with this title is shown with all that is in it. */
  public static WindowOnScreen await(Office office, String title) throws Exception {
    WindowOnScreen screen =
        new WindowOnScreen(
            queryInterface(XExtendedToolkit.class, office.service("com.sun.star.awt.Toolkit")),
            title);
    screen.control("button", is(AccessibleRole.PUSH_BUTTON));
    return screen;
  }

  /** Waits until no window has the title any more. */
  public void awaitEnd() throws Exception {
    Patience.until("the end of the window " + title, () -> count() == 0);
  }

  /** How many windows have the title; to be asked for with patience. */
  public int count() throws IndexOutOfBoundsException {
    return windows().size();
  }

  /** The names of all that is in it. */
  public List<String> texts() throws Exception {
    return names(part -> true);
  }

  /** The names of what the keyboard gets to, as a screen reader says them. */
  public List<String> controls() throws Exception {
    return names(CONTROL);
  }

  /** What its buttons say. */
  public List<String> buttons() throws Exception {
    return names(is(AccessibleRole.PUSH_BUTTON));
  }

  /** Waits until the keyboard is in a control, and in no other. */
  public void awaitKeyboard(String control) throws Exception {
    Patience.until(
        "the keyboard in " + control + " of the window " + title,
        () -> names(parts(), CONTROL.and(WindowOnScreen::hasKeyboard)).equals(List.of(control)));
  }

  /** Presses a button; what it does is done soon after. */
  public void press(String button) throws Exception {
    XAccessibleContext found =
        control(
            button,
            is(AccessibleRole.PUSH_BUTTON).and(part -> part.getAccessibleName().equals(button)));
    queryInterface(XAccessibleAction.class, found).doAccessibleAction(0);
  }

  /** Chooses a line of its list, from 0. */
  public void choose(int line) throws Exception {
    XAccessibleContext list = control("list", is(AccessibleRole.LIST));
    queryInterface(XAccessibleSelection.class, list).selectAccessibleChild(line);
  }

  private static Predicate<XAccessibleContext> is(short role) {
    return part -> part.getAccessibleRole() == role;
  }

  private XAccessibleContext control(String what, Predicate<XAccessibleContext> wanted)
      throws Exception {
    return Patience.await(
        what + " of the window " + title, () -> parts().stream().filter(wanted).findFirst());
  }

  private List<String> names(Predicate<XAccessibleContext> wanted) throws Exception {
    return Patience.await(
        "the window " + title,
        () -> Optional.of(names(parts(), wanted)).filter(names -> !names.isEmpty()));
  }

  private static List<String> names(
      List<XAccessibleContext> parts, Predicate<XAccessibleContext> wanted) {
    return parts.stream().filter(wanted).map(XAccessibleContext::getAccessibleName).toList();
  }

  private static boolean hasKeyboard(XAccessibleContext part) {
    return part.getAccessibleStateSet().contains(AccessibleStateType.FOCUSED);
  }

  /** All that is in it; nothing as long as there is no such window. */
  private List<XAccessibleContext> parts() throws IndexOutOfBoundsException {
    List<XAccessibleContext> parts = new ArrayList<>();
    for (XAccessibleContext window : windows()) {
      collect(window, parts);
    }
    return parts;
  }

  private List<XAccessibleContext> windows() throws IndexOutOfBoundsException {
    List<XAccessibleContext> windows = new ArrayList<>();
    for (int i = 0; i < toolkit.getTopWindowCount(); i++) {
      context(queryInterface(XAccessible.class, toolkit.getTopWindow(i)))
          .filter(window -> window.getAccessibleName().equals(title))
          .ifPresent(windows::add);
    }
    return windows;
  }

  private static void collect(XAccessibleContext part, List<XAccessibleContext> parts)
      throws IndexOutOfBoundsException {
    parts.add(part);
    for (int i = 0; i < part.getAccessibleChildCount(); i++) {
      Optional<XAccessibleContext> child = context(part.getAccessibleChild(i));
      if (child.isPresent()) {
        collect(child.get(), parts);
      }
    }
  }

  private static Optional<XAccessibleContext> context(XAccessible accessible) {
    return Optional.ofNullable(accessible).map(XAccessible::getAccessibleContext);
  }
}
