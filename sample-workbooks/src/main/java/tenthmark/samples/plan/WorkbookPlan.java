package tenthmark.samples.plan;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.samples.book.SampleBook;
import tenthmark.samples.book.SheetWriter;

/**
 * A workbook as data.
 *
 * @param title what it is about
 * @param caution what it is not for
 * @param task what its reader does with it; under the title of the first sheet
 * @param sheets in their order
 */
public record WorkbookPlan(String title, String caution, String task, List<SheetPlan> sheets) {

  /** On the first sheet the title, the caution, the task and the notice come first. */
  private static final int FIRST_ROW = 5;

  private static final int GAP = 1;

  /** The name of the cell that says what to install where the functions are missing. */
  public static final String NOTICE = "notice";

  private static final String NOTICE_PLACE = "A4";

  /** Copies the sheets. */
  public WorkbookPlan {
    sheets = List.copyOf(sheets);
  }

  /** A sample with invented numbers. */
  public WorkbookPlan(String title, String task, List<SheetPlan> sheets) {
    this(title, SampleBook.CAUTION, task, sheets);
  }

  /** Where its named cells are. */
  public Places places() {
    Places places = new Places();
    for (int i = 0; i < sheets.size(); i++) {
      places.on(sheets.get(i).name());
      if (i == 0) {
        places.put(NOTICE, NOTICE_PLACE);
      }
      int row = firstRow(i);
      for (Block block : sheets.get(i).blocks()) {
        block.locate(row, places);
        row += block.height() + GAP;
      }
    }
    return places;
  }

  /** A text in which formulas for the first sheet name cells, with addresses as Calc shows them. */
  public String resolvedFor(String text) {
    return places().resolved(text, sheets.get(0).name(), "").replaceAll("(\\w)!(\\w)", "$1.$2");
  }

  /** A new workbook; its formulas have no values yet. */
  public XSSFWorkbook written(Copy copy) {
    SampleBook book = new SampleBook();
    Places places = places();
    for (int i = 0; i < sheets.size(); i++) {
      SheetPlan plan = sheets.get(i);
      SheetWriter sheet =
          book.sheet(plan.name(), plan.widths().stream().mapToInt(Integer::intValue).toArray());
      if (i == 0) {
        head(book, sheet);
      }
      book.workbook().setSheetHidden(i, plan.hidden());
      int row = firstRow(i);
      for (Block block : plan.blocks()) {
        block.write(row, new BlockWriter(plan.name(), book, sheet, places, copy));
        row += block.height() + GAP;
      }
    }
    return book.workbook();
  }

  private void head(SampleBook book, SheetWriter sheet) {
    sheet.put("A1", title, book.styles().title());
    sheet.put("A2", caution, book.styles().note());
    sheet.put("A3", task, book.styles().note());
    book.noticeIfFunctionsAreMissing(sheet, NOTICE_PLACE);
    sheet.freezeBefore("B" + FIRST_ROW);
  }

  private static int firstRow(int sheet) {
    return sheet == 0 ? FIRST_ROW : 1;
  }
}
