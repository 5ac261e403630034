package tenthmark.samples.classset;

import java.util.List;
import java.util.stream.Stream;
import tenthmark.samples.plan.Column;

/**
 * A mistake put on purpose into a submission.
 *
 * @param words what the student did
 * @param changes to the correct records
 * @param findings what the checker has to find, and no more
 */
record Mistake(String words, List<Change> changes, List<Expected> findings) {

  /** The first cell of the workbook, where a finding about no cell stands. */
  static final String CORNER = "";

  /**
   * A finding.
   *
   * @param cell the record and the column, as in {@code L.reading}, or {@link #CORNER}
   * @param rule its id
   */
  record Expected(String cell, String rule) {}

  /** A mistake in one cell that one rule finds there. */
  static Mistake in(String words, String row, Column column, Object content, String rule) {
    return new Mistake(
        words,
        List.of(new Change.Put(row, column, content)),
        List.of(new Expected(row + "." + column.key(), rule)));
  }

  /** The same mistake, found in another cell. */
  Mistake at(String row, Column column) {
    return new Mistake(
        words, changes, List.of(new Expected(row + "." + column.key(), findings.get(0).rule())));
  }

  /** The same mistake with a further finding. */
  Mistake and(String row, Column column, String rule) {
    return new Mistake(
        words,
        changes,
        Stream.concat(findings.stream(), Stream.of(new Expected(row + "." + column.key(), rule)))
            .toList());
  }

  /** The same mistake with a further change. */
  Mistake with(String row, Column column, Object content) {
    return new Mistake(
        words,
        Stream.concat(changes.stream(), Stream.of(new Change.Put(row, column, content))).toList(),
        findings);
  }
}
