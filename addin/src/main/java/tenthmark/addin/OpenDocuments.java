package tenthmark.addin;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XEventListener;
import com.sun.star.uno.UnoRuntime;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The documents that functions were called from, until they are closed. Kept because each object
 * that Calc hands to Java costs time, and is not given back before the recalculation ends.
 */
final class OpenDocuments implements XEventListener {

  private final Map<XPropertySet, OpenDocument> open = new ConcurrentHashMap<>();

  OpenDocument of(XPropertySet document) {
    return open.computeIfAbsent(document, this::opened);
  }

  private OpenDocument opened(XPropertySet document) {
    UnoRuntime.queryInterface(XComponent.class, document).addEventListener(this);
    return OpenDocument.of(document);
  }

  @Override
  public void disposing(EventObject closed) {
    open.remove(UnoRuntime.queryInterface(XPropertySet.class, closed.Source));
  }
}
