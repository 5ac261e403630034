package tenthmark.addin.table;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.FontUnderline;
import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameAccess;
import com.sun.star.container.XNameContainer;
import com.sun.star.lang.Locale;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XSheetConditionalEntries;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import com.sun.star.util.XNumberFormats;
import com.sun.star.util.XNumberFormatsSupplier;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.document.Spreadsheet;

/**
 * Cells into which a number is typed. A text there, such as 24,6 where numbers have points or 24.6
 * mm, is marked at once and says behind itself that it is none; neither macro nor extension is
 * needed for that. A validation would refuse formulas too: Calc 7.4 takes none for a number.
 */
final class TypedNumbers {

  private static final String STYLE = "Tenthmark text in place of a number";
  private static final int PALE_RED = 0xFFE1DC;
  private static final int DARK_RED = 0x8B1A0E;

  private final Spreadsheet document;
  private final TableWords words;

  TypedNumbers(Spreadsheet document, TableWords words) {
    this.document = document;
    this.words = words;
  }

  /** Marks what is typed into a cell if it is a text. */
  void mark(SheetCells sheet, int column, int row) throws Exception {
    XCell cell = sheet.cell(column, row);
    CellAddress address = queryInterface(XCellAddressable.class, cell).getCellAddress();
    String place = new tenthmark.measurement.formula.CellAddress("", column, row).place();
    XPropertySet properties = queryInterface(XPropertySet.class, cell);
    Object conditions = properties.getPropertyValue("ConditionalFormat");
    queryInterface(XSheetConditionalEntries.class, conditions)
        .addNew(
            new PropertyValue[] {
              property("Operator", ConditionOperator.FORMULA),
              property("Formula1", "ISTEXT(" + place + ")"),
              property("SourcePosition", address),
              property("StyleName", style())
            });
    properties.setPropertyValue("ConditionalFormat", conditions);
  }

  private static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }

  /** The style of what is no number; the document gets it with its first table. */
  private String style() throws Exception {
    XNameAccess families =
        queryInterface(XStyleFamiliesSupplier.class, document.model()).getStyleFamilies();
    XNameContainer styles = queryInterface(XNameContainer.class, families.getByName("CellStyles"));
    if (!styles.hasByName(STYLE)) {
      Object style =
          queryInterface(XMultiServiceFactory.class, document.model())
              .createInstance("com.sun.star.style.CellStyle");
      styles.insertByName(STYLE, style);
      XPropertySet properties = queryInterface(XPropertySet.class, style);
      properties.setPropertyValue("CellBackColor", PALE_RED);
      properties.setPropertyValue("CharColor", DARK_RED);
      properties.setPropertyValue("CharUnderline", FontUnderline.WAVE);
      properties.setPropertyValue("IsTextWrapped", true);
      properties.setPropertyValue("NumberFormat", numberFormat());
    }
    return STYLE;
  }

  /** One that shows a text with the words behind it. */
  private int numberFormat() throws Exception {
    XNumberFormats formats =
        queryInterface(XNumberFormatsSupplier.class, document.model()).getNumberFormats();
    Locale english = new Locale("en", "US", "");
    String code = "@\" " + words.noNumber() + "\"";
    int known = formats.queryKey(code, english, false);
    return known < 0 ? formats.addNew(code, english) : known;
  }
}
