package tenthmark.addin.sidebar;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.accessibility.XAccessible;
import com.sun.star.awt.XWindow;
import com.sun.star.frame.XFrame;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.ui.LayoutSize;
import com.sun.star.ui.UIElementType;
import com.sun.star.ui.XSidebarPanel;
import com.sun.star.ui.XToolPanel;
import com.sun.star.ui.XUIElement;

/** A panel as the sidebar handles it. */
final class Panel extends WeakBase implements XUIElement, XToolPanel, XSidebarPanel {

  private static final int NARROWEST = 300;
  private static final int ANY = -1;

  private final String address;
  private final XFrame frame;
  private final PanelWindow window;
  private final int least;

  /**
   * A panel of the sidebar.
   *
   * @param least its least height in pixels
   */
  Panel(String address, XFrame frame, PanelWindow window, int least) {
    this.address = address;
    this.frame = frame;
    this.window = window;
    this.least = least;
  }

  @Override
  public XFrame getFrame() {
    return frame;
  }

  @Override
  public String getResourceURL() {
    return address;
  }

  @Override
  public short getType() {
    return UIElementType.TOOLPANEL;
  }

  @Override
  public Object getRealInterface() {
    return this;
  }

  @Override
  public XWindow getWindow() {
    return window.window();
  }

  @Override
  public XAccessible createAccessible(XAccessible parent) {
    return queryInterface(XAccessible.class, window.window());
  }

  @Override
  public LayoutSize getHeightForWidth(int width) {
    return new LayoutSize(least, ANY, least);
  }

  @Override
  public int getMinimalWidth() {
    return NARROWEST;
  }
}
