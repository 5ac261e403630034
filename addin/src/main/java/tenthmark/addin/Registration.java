package tenthmark.addin;

import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;
import tenthmark.addin.menu.Menu;
import tenthmark.addin.sidebar.Panels;

/** Where the office's Java loader asks for the extension's components. */
public final class Registration {

  private Registration() {}

  /** The factory of a component, or null for one that is not ours, as the loader wants it. */
  public static XSingleComponentFactory __getComponentFactory(String implementationName) {
    if (implementationName.equals(Lab.class.getName())) {
      return Factory.createComponentFactory(Lab.class, new String[] {LabComponent.SERVICE});
    }
    if (implementationName.equals(Panels.class.getName())) {
      return Factory.createComponentFactory(Panels.class, Panels.SERVICES.toArray(String[]::new));
    }
    return implementationName.equals(Menu.class.getName())
        ? Factory.createComponentFactory(Menu.class, Menu.SERVICES.toArray(String[]::new))
        : null;
  }
}
