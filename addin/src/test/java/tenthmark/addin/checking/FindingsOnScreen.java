package tenthmark.addin.checking;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.accessibility.AccessibleRole;
import com.sun.star.accessibility.XAccessible;
import com.sun.star.accessibility.XAccessibleAction;
import com.sun.star.accessibility.XAccessibleContext;
import com.sun.star.accessibility.XAccessibleSelection;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.awt.XTopWindow;
import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.lang.DisposedException;
import com.sun.star.util.URL;
import com.sun.star.util.XURLTransformer;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Workbook;

/** The window of findings as a screen reader meets it, which has neither mouse nor eyes. */
final class FindingsOnScreen {

  private static final String TITLE = "Check This Workbook";
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  /** What the keyboard gets to; a panel only holds such things together. */
  private static final Set<Short> CONTROLS =
      Set.of(
          AccessibleRole.PUSH_BUTTON,
          AccessibleRole.LIST,
          AccessibleRole.TEXT,
          AccessibleRole.SCROLL_PANE);

  private final XExtendedToolkit toolkit;

  private FindingsOnScreen(XExtendedToolkit toolkit) {
    this.toolkit = toolkit;
  }

  /** Chooses the command in the menu and waits for the window. */
  static FindingsOnScreen open(Office office, Workbook workbook) throws Exception {
    URL[] url = {new URL()};
    url[0].Complete = "tenthmark:check";
    queryInterface(XURLTransformer.class, office.service("com.sun.star.util.URLTransformer"))
        .parseStrict(url);
    XDispatch command =
        queryInterface(XDispatchProvider.class, workbook.frame()).queryDispatch(url[0], "_self", 0);
    command.dispatch(url[0], new PropertyValue[0]);
    FindingsOnScreen screen =
        new FindingsOnScreen(
            queryInterface(XExtendedToolkit.class, office.service("com.sun.star.awt.Toolkit")));
    await(screen::list);
    return screen;
  }

  boolean isOpen() {
    return window().isPresent();
  }

  /** Presses a button; what it does is done soon after. */
  void press(String button) throws Exception {
    XAccessibleContext found = await(() -> control(AccessibleRole.PUSH_BUTTON, button));
    queryInterface(XAccessibleAction.class, found).doAccessibleAction(0);
  }

  void choose(int line) throws Exception {
    queryInterface(XAccessibleSelection.class, list().orElseThrow()).selectAccessibleChild(line);
  }

  private Optional<XAccessibleContext> list() {
    return window()
        .flatMap(
            window ->
                all(window).filter(c -> c.getAccessibleRole() == AccessibleRole.LIST).findFirst());
  }

  List<String> texts() {
    return all(window().orElseThrow()).map(XAccessibleContext::getAccessibleName).toList();
  }

  List<String> namesOfControls() {
    return all(window().orElseThrow())
        .filter(c -> CONTROLS.contains(c.getAccessibleRole()))
        .map(XAccessibleContext::getAccessibleName)
        .toList();
  }

  private Optional<XAccessibleContext> control(short role, String name) {
    return window()
        .flatMap(
            window ->
                all(window)
                    .filter(c -> c.getAccessibleRole() == role)
                    .filter(c -> c.getAccessibleName().equals(name))
                    .findFirst());
  }

  private Optional<XAccessibleContext> window() {
    return windows().filter(window -> window.getAccessibleName().equals(TITLE)).findFirst();
  }

  private Stream<XAccessibleContext> windows() {
    List<XAccessibleContext> windows = new ArrayList<>();
    for (int i = 0; i < toolkit.getTopWindowCount(); i++) {
      try {
        XTopWindow window = toolkit.getTopWindow(i);
        XAccessible accessible = queryInterface(XAccessible.class, window);
        if (accessible != null && accessible.getAccessibleContext() != null) {
          windows.add(accessible.getAccessibleContext());
        }
      } catch (com.sun.star.lang.IndexOutOfBoundsException closed) {
        return windows.stream();
      }
    }
    return windows.stream();
  }

  private static Stream<XAccessibleContext> all(XAccessibleContext parent) {
    return Stream.concat(Stream.of(parent), children(parent).flatMap(FindingsOnScreen::all));
  }

  private static Stream<XAccessibleContext> children(XAccessibleContext parent) {
    List<XAccessibleContext> children = new ArrayList<>();
    for (int i = 0; i < Math.min(60, parent.getAccessibleChildCount()); i++) {
      try {
        XAccessible child = parent.getAccessibleChild(i);
        if (child != null) {
          children.add(child.getAccessibleContext());
        }
      } catch (com.sun.star.lang.IndexOutOfBoundsException gone) {
        break;
      }
    }
    return children.stream();
  }

  static <T> T await(Supplier<Optional<T>> wanted) {
    Instant end = Instant.now().plus(PATIENCE);
    while (Instant.now().isBefore(end)) {
      Optional<T> found = attempted(wanted);
      if (found.isPresent()) {
        return found.get();
      }
      try {
        Thread.sleep(100);
      } catch (InterruptedException stopped) {
        throw new IllegalStateException(stopped);
      }
    }
    assertThat(wanted.get()).as("waited in vain").isPresent();
    throw new IllegalStateException();
  }

  /** Nothing yet where a window closes while it is looked at, as the one that shows progress. */
  private static <T> Optional<T> attempted(Supplier<Optional<T>> wanted) {
    try {
      return wanted.get();
    } catch (DisposedException closed) {
      return Optional.empty();
    }
  }
}
