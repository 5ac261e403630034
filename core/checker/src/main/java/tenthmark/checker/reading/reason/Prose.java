package tenthmark.checker.reading.reason;

import tenthmark.measurement.formula.CellAddress;

/**
 * A text of several words.
 *
 * @param cell where it stands
 * @param text without the word that labels it
 * @param labelled whether a word calls it a reason
 * @param written how it stands there
 */
record Prose(CellAddress cell, String text, boolean labelled, Written written) {

  /** How a text stands at a cell. */
  enum Written {
    IN_CELL,
    IN_BOX,
    AS_COMMENT
  }
}
