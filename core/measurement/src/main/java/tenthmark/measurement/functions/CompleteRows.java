package tenthmark.measurement.functions;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.wording.Message;

/** Ranges paired cell by cell: a row counts only if no range is blank there. */
final class CompleteRows {

  private final List<String> names = new ArrayList<>();
  private final List<List<OptionalDouble>> columns = new ArrayList<>();

  /**
   * Adds a range.
   *
   * @throws ArgumentException if it has not as many cells as the first one
   */
  CompleteRows with(String name, List<OptionalDouble> cells) {
    if (!columns.isEmpty() && columns.get(0).size() != cells.size()) {
      throw ArgumentException.of(
          "cells.unequal",
          name,
          Message.counted("cells", cells.size()),
          names.get(0),
          Message.counted("cells", columns.get(0).size()));
    }
    names.add(name);
    columns.add(cells);
    return this;
  }

  /** Adds a range, or one number that counts for every row. */
  CompleteRows withEach(String name, List<OptionalDouble> cells) {
    if (cells.size() != 1) {
      return with(name, cells);
    }
    if (cells.get(0).isEmpty()) {
      throw ArgumentException.notAllowed(
          name, Message.of("found.blank"), Message.of("allowed.number.or.range"));
    }
    columns.add(Collections.nCopies(columns.get(0).size(), cells.get(0)));
    return this;
  }

  /**
   * The numbers of each complete row, in the order in which the ranges were added.
   *
   * @param purpose the part of its key after {@code rows.few.}
   * @throws ArgumentException if there are fewer than {@code least} complete rows
   */
  List<double[]> atLeast(int least, String purpose) {
    List<double[]> rows = new ArrayList<>();
    for (int row = 0; row < columns.get(0).size(); row++) {
      int place = row;
      if (columns.stream().allMatch(column -> column.get(place).isPresent())) {
        rows.add(columns.stream().mapToDouble(column -> column.get(place).getAsDouble()).toArray());
      }
    }
    if (rows.size() < least) {
      throw ArgumentException.of(
          "rows.few",
          String.join(", ", names),
          Message.counted("rows", rows.size()),
          Message.of("rows.few." + purpose),
          least);
    }
    return rows;
  }
}
