package tenthmark.checker.evaluation;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.ControlPtg;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.OperationPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.RefPtgBase;
import tenthmark.measurement.formula.CellAddress;

/** A formula with its relative references as distances, so that copies of it look the same. */
final class RelativeForm {

  private final CellAddress home;
  private final Function<NamePtg, String> names;

  private RelativeForm(CellAddress home, Function<NamePtg, String> names) {
    this.home = home;
    this.names = names;
  }

  /**
   * The form of a formula.
   *
   * @param home the cell that holds it
   * @param names what a token of a name is called
   */
  static String of(Ptg[] tokens, CellAddress home, Function<NamePtg, String> names) {
    return String.join("", parts(tokens, home, names));
  }

  /** The same token by token, operands before what is done to them. */
  static List<String> parts(Ptg[] tokens, CellAddress home, Function<NamePtg, String> names) {
    RelativeForm relative = new RelativeForm(home, names);
    return Arrays.stream(tokens)
        .map(token -> token.getClass().getSimpleName() + " " + relative.part(token))
        .toList();
  }

  private String part(Ptg token) {
    if (token instanceof RefPtgBase cell) {
      return place(cell.getColumn(), cell.isColRelative(), home.column())
          + place(cell.getRow(), cell.isRowRelative(), home.row());
    }
    if (token instanceof AreaPtgBase area) {
      return place(area.getFirstColumn(), area.isFirstColRelative(), home.column())
          + place(area.getFirstRow(), area.isFirstRowRelative(), home.row())
          + place(area.getLastColumn(), area.isLastColRelative(), home.column())
          + place(area.getLastRow(), area.isLastRowRelative(), home.row());
    }
    if (token instanceof AbstractFunctionPtg function) {
      return function.getName() + function.getNumberOfOperands();
    }
    if (token instanceof NamePtg name) {
      return names.apply(name);
    }
    return token instanceof OperationPtg || token instanceof ControlPtg
        ? ""
        : token.toFormulaString();
  }

  private static String place(int index, boolean relative, int home) {
    return relative ? "[" + (index - home) + "]" : "$" + index;
  }
}
