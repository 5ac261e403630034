package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;
import tenthmark.addin.notice.Notice;
import tenthmark.addin.notice.Offer;

/** Adds the notice for people without the functions below what is on the first sheet with one. */
@AutoService(Command.class)
public final class AddNotice implements Command {

  @Override
  public String name() {
    return "add-notice";
  }

  @Override
  public void run(Workplace workplace) throws Exception {
    Spreadsheet document = workplace.spreadsheet();
    Notice notice = new Notice(document);
    if (notice.isThere()) {
      throw new RefusalException("notice.there");
    }
    SheetCells sheet =
        notice.firstSheetInNeed().orElseThrow(() -> new RefusalException("notice.not-needed"));
    workplace.refuseUnchangeable(sheet);
    document.change(workplace.title(), () -> document.select(add(notice, sheet, workplace)));
    Offer.end(workplace.frame().getController());
    workplace.conversation().tell(workplace.texts().say("notice.added"));
  }

  private static XCell add(Notice notice, SheetCells sheet, Workplace workplace) throws Exception {
    return notice
        .addTo(sheet, workplace.locale().language())
        .orElseThrow(() -> new RefusalException("notice.no-room"));
  }
}
