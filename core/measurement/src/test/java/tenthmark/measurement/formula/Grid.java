package tenthmark.measurement.formula;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tenthmark.measurement.formula.Expression.CellReference;

/** A document in memory: {@code new Grid().put("B4", 0.25).put("Timing.B9", "=B4*2")}. */
public final class Grid implements Cells {

  public static final String SHEET = "Sheet1";

  private final Map<CellAddress, CellContent> contents = new HashMap<>();
  private final Map<String, NamedFormula> names = new HashMap<>();
  private final Map<CellAddress, CellContent> shown = new HashMap<>();
  private final Effort effort = Effort.ofOneCalculation();
  private boolean onlySheet;
  private int usedRows = Integer.MAX_VALUE;

  public Grid put(String cell, double number) {
    contents.put(address(cell), new CellContent.Number(number));
    return this;
  }

  /** A text; one that begins with an equals sign is a formula. */
  public Grid put(String cell, String text) {
    contents.put(
        address(cell),
        text.startsWith("=") || text.startsWith("of:") || text.startsWith("{")
            ? new CellContent.Formula(text)
            : new CellContent.Text(text));
    return this;
  }

  /** A cell of an array formula that fills an area. */
  public Grid put(String cell, String formula, CellRange area) {
    contents.put(address(cell), new CellContent.Formula(formula, Optional.of(area)));
    return this;
  }

  /** A document whose only sheet is the first one. */
  public Grid onlySheet() {
    onlySheet = true;
    return this;
  }

  public Grid fault(String cell, String name) {
    contents.put(address(cell), new CellContent.Fault(name));
    return this;
  }

  public Grid name(String name, String formula) {
    return name(name, formula, "A1");
  }

  /** A name whose relative references are seen from a cell. */
  public Grid name(String name, String formula, String base) {
    names.put(
        name.toUpperCase(Locale.ROOT), new NamedFormula(formula, address(base), SheetSize.LARGE));
    return this;
  }

  public Grid shows(String cell, double number) {
    shown.put(address(cell), new CellContent.Number(number));
    return this;
  }

  public Grid shows(String cell, String text) {
    shown.put(address(cell), new CellContent.Text(text));
    return this;
  }

  /** A formula cell that shows an error. */
  public Grid showsError(String cell, String name) {
    shown.put(address(cell), new CellContent.Fault(name));
    return this;
  }

  /** Answers ranges only down to this row, as a document does that knows what it uses. */
  public Grid usedRows(int rows) {
    usedRows = rows;
    return this;
  }

  /** {@code B4} on the first sheet, or {@code Timing.B4}. */
  public static CellAddress address(String cell) {
    int dot = cell.lastIndexOf('.');
    CellReference reference =
        new References(Displacement.NONE).cell(null, cell.substring(dot + 1)).orElseThrow();
    return reference.from(dot < 0 ? SHEET : cell.substring(0, dot));
  }

  @Override
  public Effort effort() {
    return effort;
  }

  @Override
  public boolean hasSheet(String name) {
    return !onlySheet || name.equalsIgnoreCase(SHEET);
  }

  @Override
  public CellContent at(CellAddress address) {
    return contents.getOrDefault(address, new CellContent.Empty());
  }

  @Override
  public List<List<CellContent>> rows(CellRange range) {
    int bottom = Math.min(range.bottom(), usedRows - 1);
    return Cells.super.rows(
        new CellRange(range.sheet(), range.left(), range.top(), range.right(), bottom));
  }

  @Override
  public Optional<NamedFormula> named(String name, String sheet) {
    return Optional.ofNullable(names.get(name.toUpperCase(Locale.ROOT)));
  }

  @Override
  public Optional<CellContent> shown(CellAddress address) {
    return Optional.ofNullable(shown.get(address));
  }
}
