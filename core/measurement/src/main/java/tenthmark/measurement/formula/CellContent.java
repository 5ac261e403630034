package tenthmark.measurement.formula;

import java.util.Optional;

/** What one cell of a document holds. */
public sealed interface CellContent {

  /** An empty cell. */
  record Empty() implements CellContent {}

  /** A number typed in. */
  record Number(double value) implements CellContent {}

  /** A text typed in. */
  record Text(String text) implements CellContent {}

  /**
   * A formula as the document shows it, with its leading equals sign. Its value is not part of it:
   * the formula engine computes it.
   *
   * @param text in braces if it is an array formula
   * @param array the cells that one array formula fills, this one included
   */
  record Formula(String text, Optional<CellRange> array) implements CellContent {

    /** A formula of one cell. */
    public Formula(String text) {
      this(text, Optional.empty());
    }
  }

  /** An error by its English name: of a cell without formula, or what a formula shows. */
  record Fault(String name) implements CellContent {}
}
