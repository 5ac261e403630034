package tenthmark.addin.table;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.CellAddress;

/**
 * The formulas of one record as Calc takes them: {@code {VALUE}} stands for the cell of the
 * record's first row in that column, {@code {SIZE+2}} for one two rows below, and functions go by
 * their stored names.
 */
final class Formulas {

  private static final Pattern CELL = Pattern.compile("\\{([A-Z_]+)(?:\\+(\\d))?}");
  private static final Pattern FUNCTION = Pattern.compile("LAB_[A-Z]+");

  private final RecordTable table;
  private final int row;
  private final Catalogue catalogue = Catalogue.load();

  Formulas(RecordTable table, int row) {
    this.table = table;
    this.row = row;
  }

  String resolved(String formula) {
    String named = FUNCTION.matcher(formula).replaceAll(this::storedName);
    return CELL.matcher(named).replaceAll(this::place);
  }

  private String storedName(MatchResult function) {
    return catalogue.find(function.group()).orElseThrow().declaration().storedName();
  }

  private String place(MatchResult cell) {
    int below = cell.group(2) == null ? 0 : Integer.parseInt(cell.group(2));
    int column = table.place(Column.valueOf(cell.group(1)));
    return new CellAddress("", column, row + below).place();
  }
}
