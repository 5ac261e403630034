package tenthmark.addin.sidebar;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.XContainerWindowProvider;
import com.sun.star.awt.XWindow;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.beans.PropertyValue;
import com.sun.star.container.NoSuchElementException;
import com.sun.star.deployment.PackageInformationProvider;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.ui.XUIElement;
import com.sun.star.ui.XUIElementFactory;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import tenthmark.addin.menu.Workplace;

/** Makes the panels of the deck, by the last part of their addresses. */
public final class Panels extends WeakBase implements XUIElementFactory, XServiceInfo {

  /** The services that it is registered with. */
  public static final List<String> SERVICES = List.of("com.sun.star.ui.UIElementFactory");

  private static final String EXTENSION = "org.tenthmark.calc";

  private final XComponentContext office;

  /** As the office makes it. */
  public Panels(XComponentContext office) {
    this.office = office;
  }

  @Override
  public XUIElement createUIElement(String address, PropertyValue[] arguments)
      throws NoSuchElementException, IllegalArgumentException {
    XFrame frame = queryInterface(XFrame.class, argument("Frame", arguments));
    XWindow parent = queryInterface(XWindow.class, argument("ParentWindow", arguments));
    try {
      String panel = address.substring(address.lastIndexOf('/') + 1);
      return switch (panel) {
        case "cell" -> {
          PanelWindow window = window(panel, parent);
          CellPanel.fill(window, Workplace.ofUser(office, frame, "explain"));
          yield new Panel(address, frame, window, 250);
        }
        case "findings" -> {
          PanelWindow window = window(panel, parent);
          FindingsPanel.fill(window, Workplace.ofUser(office, frame, "check"), folder());
          yield new Panel(address, frame, window, 320);
        }
        default -> throw new NoSuchElementException(address, this);
      };
    } catch (NoSuchElementException unknown) {
      throw unknown;
    } catch (Exception failure) {
      throw new IllegalStateException(failure);
    }
  }

  private static Object argument(String name, PropertyValue[] arguments)
      throws IllegalArgumentException {
    for (PropertyValue argument : arguments) {
      if (argument.Name.equals(name)) {
        return argument.Value;
      }
    }
    throw new IllegalArgumentException("a panel needs the argument " + name);
  }

  private PanelWindow window(String panel, XWindow parent) throws Exception {
    XContainerWindowProvider provider =
        queryInterface(
            XContainerWindowProvider.class,
            office
                .getServiceManager()
                .createInstanceWithContext("com.sun.star.awt.ContainerWindowProvider", office));
    String description = "vnd.sun.star.extension://" + EXTENSION + "/panels/" + panel + ".xdl";
    return new PanelWindow(
        provider.createContainerWindow(
            description, "", queryInterface(XWindowPeer.class, parent), null));
  }

  private Path folder() {
    String location = PackageInformationProvider.get(office).getPackageLocation(EXTENSION);
    return Path.of(URI.create(location));
  }

  @Override
  public String getImplementationName() {
    return Panels.class.getName();
  }

  @Override
  public boolean supportsService(String name) {
    return SERVICES.contains(name);
  }

  @Override
  public String[] getSupportedServiceNames() {
    return SERVICES.toArray(String[]::new);
  }
}
