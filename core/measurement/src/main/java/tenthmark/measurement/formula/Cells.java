package tenthmark.measurement.formula;

import java.util.Optional;

/** The cells of a document as the formula engine reads them: Calc's, or a file's. */
public interface Cells {

  /** What a cell holds; an address outside the document's sheets is empty. */
  CellContent at(CellAddress address);

  /** The range that a name stands for as seen from a sheet, if it stands for one. */
  Optional<CellRange> named(String name, String sheet);
}
