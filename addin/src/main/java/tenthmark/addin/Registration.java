package tenthmark.addin;

import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;

/** Where the office's Java loader asks for the extension's component. */
public final class Registration {

  private Registration() {}

  /** The factory of a component, or null for one that is not ours, as the loader wants it. */
  public static XSingleComponentFactory __getComponentFactory(String implementationName) {
    return implementationName.equals(Lab.class.getName())
        ? Factory.createComponentFactory(Lab.class, new String[] {LabComponent.SERVICE})
        : null;
  }
}
