package tenthmark.checker.evaluation;

import java.util.Arrays;
import java.util.stream.Stream;
import org.apache.poi.ss.formula.ptg.AreaErrPtg;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.Deleted3DPxg;
import org.apache.poi.ss.formula.ptg.ErrPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.RefErrorPtg;
import org.apache.poi.ss.formula.ptg.RefPtgBase;
import tenthmark.checker.workbook.DefinedName;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.NamedFormula;

/** The formula of a name with its relative references as the cell sees them that uses the name. */
final class MovedReferences {

  private final NamedFormula name;
  private final int columns;
  private final int rows;

  private MovedReferences(NamedFormula name, CellAddress user) {
    this.name = name;
    this.columns = user.column() - name.base().column();
    this.rows = user.row() - name.base().row();
  }

  /**
   * Moves them.
   *
   * @throws NotCheckableException if the file says that a reference is lost, which office programs
   *     write for one that would leave the sheet when seen from A1
   */
  static Ptg[] of(Ptg[] tokens, DefinedName name, CellAddress user) {
    if (Stream.of(tokens).anyMatch(MovedReferences::isLost)) {
      throw NotCheckableException.of("reason.name.lost", name.name());
    }
    MovedReferences moved = new MovedReferences(name.meaning(), user);
    return Arrays.stream(tokens).map(moved::of).toArray(Ptg[]::new);
  }

  private static boolean isLost(Ptg token) {
    return token instanceof RefErrorPtg
        || token instanceof AreaErrPtg
        || token instanceof Deleted3DPxg
        || token instanceof ErrPtg error && error == ErrPtg.REF_INVALID;
  }

  private Ptg of(Ptg token) {
    if (token instanceof RefPtgBase cell) {
      RefPtgBase moved = (RefPtgBase) cell.copy();
      moved.setColumn(column(cell.getColumn(), cell.isColRelative()));
      moved.setRow(row(cell.getRow(), cell.isRowRelative()));
      return moved;
    }
    if (token instanceof AreaPtgBase area) {
      AreaPtgBase moved = (AreaPtgBase) area.copy();
      moved.setFirstColumn(column(area.getFirstColumn(), area.isFirstColRelative()));
      moved.setFirstRow(row(area.getFirstRow(), area.isFirstRowRelative()));
      moved.setLastColumn(column(area.getLastColumn(), area.isLastColRelative()));
      moved.setLastRow(row(area.getLastRow(), area.isLastRowRelative()));
      return moved;
    }
    return token;
  }

  private int column(int column, boolean relative) {
    return relative ? Math.floorMod(column + columns, name.size().columns()) : column;
  }

  private int row(int row, boolean relative) {
    return relative ? Math.floorMod(row + rows, name.size().rows()) : row;
  }
}
