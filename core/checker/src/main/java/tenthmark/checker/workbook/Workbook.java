package tenthmark.checker.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.measurement.formula.CellAddress;

/** A workbook as a file holds it, whatever the format. */
public record Workbook(List<Sheet> sheets, List<DefinedName> names) {

  /** Copies the lists. */
  public Workbook {
    sheets = List.copyOf(sheets);
    names = List.copyOf(names);
  }

  /**
   * The same workbook with other contents in some cells; empty for a cell that holds nothing then.
   * What programs stored with formulas stays, also with those that follow from these cells.
   */
  public Workbook with(Map<CellAddress, Optional<Content>> contents) {
    return new Workbook(sheets.stream().map(sheet -> sheet.with(contents)).toList(), names);
  }

  /** The sheet with this name, in any letter case. */
  public Optional<Sheet> sheet(String name) {
    for (Sheet sheet : sheets) {
      if (sheet.name().equalsIgnoreCase(name)) {
        return Optional.of(sheet);
      }
    }
    return Optional.empty();
  }

  /** The cell at an address, if it holds something. */
  public Optional<Cell> at(CellAddress address) {
    return sheet(address.sheet()).flatMap(sheet -> sheet.at(address.column(), address.row()));
  }

  /** The name as seen from a sheet: one that holds there only comes before one for all sheets. */
  public Optional<DefinedName> name(String name, String sheet) {
    return names.stream()
        .filter(defined -> defined.name().equalsIgnoreCase(name))
        .filter(defined -> defined.sheet().map(sheet::equalsIgnoreCase).orElse(true))
        .reduce((one, other) -> one.sheet().isPresent() ? one : other);
  }
}
