package tenthmark.checker.reading.reason;

import tenthmark.measurement.formula.CellAddress;

/**
 * A text of several words.
 *
 * @param cell where it stands
 * @param text without the word that labels it
 * @param labelled whether a word calls it a reason
 */
record Prose(CellAddress cell, String text, boolean labelled) {}
