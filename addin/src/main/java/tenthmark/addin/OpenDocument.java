package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.XSpreadsheetDocument;

/**
 * A document that is open in Calc, as the two objects of it that live as long as it does. Nothing
 * of its content is in here.
 */
record OpenDocument(XPropertySet properties, XNameAccess sheets) {

  static OpenDocument of(XPropertySet document) {
    return new OpenDocument(
        document,
        queryInterface(
            XNameAccess.class, queryInterface(XSpreadsheetDocument.class, document).getSheets()));
  }
}
