package tenthmark.addin.menu;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.frame.DispatchDescriptor;
import com.sun.star.frame.XDesktop;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.XInitialization;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.task.XJobExecutor;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;
import java.util.Arrays;
import java.util.List;

/**
 * What the office asks for the commands {@code tenthmark:<command>} of one window. The buttons of
 * the toolbar are {@code service:tenthmark.Menu?<command>} instead: whether such a button can be
 * pressed is not asked, so that Java does not start with every Calc.
 */
public final class Menu extends WeakBase
    implements XDispatchProvider, XInitialization, XJobExecutor, XServiceInfo {

  /** The services that it is registered with. */
  public static final List<String> SERVICES =
      List.of("tenthmark.Menu", "com.sun.star.frame.ProtocolHandler");

  private static final String PROTOCOL = "tenthmark:";

  private final XComponentContext office;
  private final Commands commands = Commands.load();
  private XFrame frame;

  /** As the office makes it. */
  public Menu(XComponentContext office) {
    this.office = office;
  }

  @Override
  public void initialize(Object[] arguments) {
    frame = arguments.length == 0 ? null : queryInterface(XFrame.class, arguments[0]);
  }

  /** The command, or null for one that is not ours, as the office wants it. */
  @Override
  public XDispatch queryDispatch(URL url, String target, int searchFlags) {
    return url.Complete.startsWith(PROTOCOL)
        ? commands
            .find(url.Complete.substring(PROTOCOL.length()))
            .map(command -> new CommandDispatch(command, office, frame))
            .orElse(null)
        : null;
  }

  /** Does the command of a button in the window that is in front. */
  @Override
  public void trigger(String name) {
    XFrame front =
        queryInterface(
                XDesktop.class, office.getValueByName("/singletons/com.sun.star.frame.theDesktop"))
            .getCurrentFrame();
    if (front != null) {
      commands
          .find(name)
          .ifPresent(command -> new CommandDispatch(command, office, front).perform());
    }
  }

  @Override
  public XDispatch[] queryDispatches(DispatchDescriptor[] requests) {
    return Arrays.stream(requests)
        .map(request -> queryDispatch(request.FeatureURL, request.FrameName, request.SearchFlags))
        .toArray(XDispatch[]::new);
  }

  @Override
  public String getImplementationName() {
    return Menu.class.getName();
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
