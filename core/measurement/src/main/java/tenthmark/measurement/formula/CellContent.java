package tenthmark.measurement.formula;

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
   */
  record Formula(String text) implements CellContent {}

  /** An error by its English name: of a cell without formula, or what a formula shows. */
  record Fault(String name) implements CellContent {}
}
