package tenthmark.addin.menu;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.NamedValue;
import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.frame.FeatureStateEvent;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XDispatchResultListener;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XNotifyingDispatch;
import com.sun.star.frame.XStatusListener;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XMultiServiceFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;

/** The menu as the office knows it. */
@ExtendWith(OfficeExtension.class)
@TestInstance(Lifecycle.PER_CLASS)
class MenuIT {

  private static final String PROTOCOL = "tenthmark:";

  private Office office;
  private Workbook workbook;

  @BeforeAll
  void use(Office running, Workbook empty) {
    office = running;
    workbook = empty;
  }

  static Stream<String> commands() {
    return Commands.load().all().stream().map(Command::name);
  }

  @Test
  void listsEveryCommandInMenuAndToolbar() throws Exception {
    assertThat(configured("OfficeMenuBar/org.tenthmark.calc.menu/Submenu"))
        .containsExactlyInAnyOrderElementsOf(commands().map(name -> "tenthmark:" + name).toList());
    assertThat(configured("OfficeToolBar/org.tenthmark.calc.toolbar"))
        .containsExactlyInAnyOrderElementsOf(
            commands().map(name -> "service:tenthmark.Menu?" + name).toList());
  }

  @ParameterizedTest
  @MethodSource("commands")
  void enablesACommandInASpreadsheet(String command) throws Exception {
    assertThat(enabled(command, workbook.frame())).isTrue();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void disablesACommandWhereThereIsNone(String command) throws Exception {
    assertThat(enabled(command, withoutDocument())).isFalse();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void refusesACommandWhereThereIsNone(String command) throws Exception {
    List<DispatchResultEvent> results = new ArrayList<>();
    queryInterface(XNotifyingDispatch.class, dispatch(command, withoutDocument()))
        .dispatchWithNotification(
            office.address(PROTOCOL + command),
            new PropertyValue[0],
            new XDispatchResultListener() {
              @Override
              public void dispatchFinished(DispatchResultEvent result) {
                results.add(result);
              }

              @Override
              public void disposing(EventObject source) {}
            });
    assertThat(results).hasSize(1);
    assertThat(results.get(0).State).isEqualTo(DispatchResultState.FAILURE);
    assertThat(results.get(0).Result)
        .isEqualTo("Open a spreadsheet first: this command works in a window of Calc.");
  }

  private XFrame withoutDocument() throws Exception {
    XFrame empty = queryInterface(XFrame.class, office.service("com.sun.star.frame.Frame"));
    empty.initialize(workbook.frame().getContainerWindow());
    return empty;
  }

  @Test
  void knowsNoOtherCommand() throws Exception {
    assertThat(dispatch("no-such-command", workbook.frame())).isNull();
  }

  private boolean enabled(String command, XFrame frame) throws Exception {
    List<Boolean> states = new ArrayList<>();
    dispatch(command, frame)
        .addStatusListener(
            new XStatusListener() {
              @Override
              public void statusChanged(FeatureStateEvent state) {
                states.add(state.IsEnabled);
              }

              @Override
              public void disposing(EventObject source) {}
            },
            office.address(PROTOCOL + command));
    assertThat(states).hasSize(1);
    return states.get(0);
  }

  private XDispatch dispatch(String command, XFrame frame) throws Exception {
    return queryInterface(XDispatchProvider.class, frame)
        .queryDispatch(office.address(PROTOCOL + command), "_self", 0);
  }

  /** The addresses of the commands at a place of the configuration. */
  private List<String> configured(String place) throws Exception {
    XMultiServiceFactory configuration =
        queryInterface(
            XMultiServiceFactory.class,
            office.service("com.sun.star.configuration.ConfigurationProvider"));
    Object[] path = {new NamedValue("nodepath", "/org.openoffice.Office.Addons/AddonUI/" + place)};
    XNameAccess entries =
        queryInterface(
            XNameAccess.class,
            configuration.createInstanceWithArguments(
                "com.sun.star.configuration.ConfigurationAccess", path));
    List<String> urls = new ArrayList<>();
    for (String name : entries.getElementNames()) {
      XNameAccess entry = queryInterface(XNameAccess.class, entries.getByName(name));
      urls.add((String) entry.getByName("URL"));
    }
    urls.removeIf(url -> url.equals("private:separator"));
    return urls;
  }
}
