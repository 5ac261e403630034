package tenthmark.addin.bare;

import com.sun.star.lang.XServiceInfo;
import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.XComponentContext;

/** A worksheet function in Java that does next to nothing: what is left is what any costs. */
public final class Bare extends WeakBase implements XBare, XServiceInfo {

  static final String SERVICE = "tenthmark.Bare";

  /** Made by the office. */
  public Bare(XComponentContext context) {}

  /** Where the office's Java loader asks for the component. */
  public static XSingleComponentFactory __getComponentFactory(String implementationName) {
    return implementationName.equals(Bare.class.getName())
        ? Factory.createComponentFactory(Bare.class, new String[] {SERVICE})
        : null;
  }

  @Override
  public double half(Object value) {
    return (Double) value / 2;
  }

  @Override
  public String getImplementationName() {
    return Bare.class.getName();
  }

  @Override
  public boolean supportsService(String name) {
    return SERVICE.equals(name);
  }

  @Override
  public String[] getSupportedServiceNames() {
    return new String[] {SERVICE};
  }
}
