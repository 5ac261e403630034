package tenthmark.samples.plan;

import tenthmark.samples.book.SampleBook;
import tenthmark.samples.book.SheetWriter;
import tenthmark.samples.book.Styles;

/**
 * Writes blocks on one sheet.
 *
 * @param name of the sheet
 * @param copy how much of the contents is written
 */
record BlockWriter(String name, SampleBook book, SheetWriter sheet, Places places, Copy copy) {

  Styles styles() {
    return book.styles();
  }

  void title(int row, String title) {
    sheet.put("A" + row, title, styles().title());
  }

  /** The content of a table's cell. */
  void cell(String address, Object content, Row row, boolean given) {
    boolean formula = content instanceof String text && text.startsWith("=");
    if (formula) {
      sheet.put(
          address,
          places.resolved((String) content, name, row.key()),
          book.calculated(row.format()));
    } else {
      sheet.put(
          address,
          given || copy == Copy.COMPLETED ? content : "",
          given ? styles().given() : styles().cell());
    }
  }
}
