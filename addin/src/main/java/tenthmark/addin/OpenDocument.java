package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.XSpreadsheetDocument;
import java.time.Duration;
import tenthmark.measurement.formula.Effort;

/**
 * A document that is open in Calc, as the two objects of it that live as long as it does, and what
 * long calculations cost in it. Nothing of its content is in here but its convention.
 */
record OpenDocument(
    XPropertySet properties, XNameAccess sheets, Effort effort, LiveConvention convention) {

  /** Between two recalculations. */
  private static final Duration PAUSE = Duration.ofSeconds(2);

  static OpenDocument of(XPropertySet document) {
    return new OpenDocument(
        document,
        queryInterface(
            XNameAccess.class, queryInterface(XSpreadsheetDocument.class, document).getSheets()),
        new Effort(System::nanoTime, PAUSE),
        new LiveConvention(document));
  }
}
