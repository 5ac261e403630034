package tenthmark.addin.menu.command;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.google.auto.service.AutoService;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import tenthmark.addin.OfficeCells;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.document.Spreadsheet;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.explanation.Explainer;
import tenthmark.measurement.explanation.TableSize;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Spreads a function that gives a table over as many cells as the table has: a single cell shows
 * only its first. A table that is spread already gets the size that it has now.
 */
@AutoService(Command.class)
public final class SpreadTable implements Command {

  private final Explainer explainer = new Explainer(Catalogue.load());

  @Override
  public String name() {
    return "spread";
  }

  @Override
  public void run(Workplace workplace) throws Exception {
    Spreadsheet document = workplace.spreadsheet();
    CellRangeAddress selected =
        document.selection().orElseThrow(() -> new RefusalException("cells.none"));
    SheetCells sheet = document.sheet(selected.Sheet);
    workplace.refuseUnchangeable(sheet);
    CellRangeAddress old = sheet.arrayAt(selected.StartColumn, selected.StartRow);
    OfficeCells cells = OfficeCells.of(document.model());
    TableSize size =
        explainer
            .table(cells, cells.first(old), workplace.texts())
            .orElseThrow(() -> new RefusalException("spread.none"));
    int right = old.StartColumn + size.width() - 1;
    int bottom = old.StartRow + size.height() - 1;
    if (!sheet.reaches(right, bottom)) {
      throw new RefusalException("table.no-room");
    }
    String formula = sheet.formula(old.StartColumn, old.StartRow);
    document.change(
        workplace.title(),
        () -> {
          sheet.clear(old);
          XCellRange wanted = sheet.range(old.StartColumn, old.StartRow, right, bottom);
          if (!sheet.isEmpty(old.StartColumn, old.StartRow, right, bottom)) {
            throw new RefusalException("spread.not-empty", places(cells.first(old), size));
          }
          queryInterface(XArrayFormulaRange.class, wanted).setArrayFormula(formula);
        });
    document.select(sheet.cell(old.StartColumn, old.StartRow));
  }

  private static String places(CellAddress first, TableSize size) {
    return new CellRange(
            first.sheet(),
            first.column(),
            first.row(),
            first.column() + size.width() - 1,
            first.row() + size.height() - 1)
        .place();
  }
}
