package tenthmark.checker.reading.layout;

import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** Finds what names a cell or a range: the text to its left or above it. */
final class Labels {

  /** A text that names something. */
  record Label(TypedCell cell, Heading heading) {}

  private static final int FARTHEST_LEFT = 6;
  private static final int FARTHEST_ABOVE = 400;

  private final Surroundings surroundings;

  Labels(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  private HeadingGrammar grammar() {
    return surroundings.grammar();
  }

  private Optional<TypedSheet> sheet(String name) {
    return surroundings.sheet(name);
  }

  /** The nearest text to the left that is no unit. */
  Optional<Label> left(CellAddress cell) {
    return sheet(cell.sheet()).flatMap(sheet -> left(sheet, cell));
  }

  private Optional<Label> left(TypedSheet sheet, CellAddress cell) {
    Map.Entry<Integer, TypedCell> next = sheet.row(cell.row()).lowerEntry(cell.column());
    while (next != null && cell.column() - next.getKey() <= FARTHEST_LEFT) {
      Optional<Label> label = label(next.getValue());
      if (label.isPresent()) {
        return label;
      }
      next = sheet.row(cell.row()).lowerEntry(next.getKey());
    }
    return Optional.empty();
  }

  /** The nearest text above that is no unit, with the unit that stands between. */
  Optional<Label> above(CellAddress cell) {
    return sheet(cell.sheet()).flatMap(sheet -> above(sheet, cell));
  }

  private Optional<Label> above(TypedSheet sheet, CellAddress cell) {
    String unit = "";
    int blank = 0;
    for (int row = cell.row() - 1; row >= Math.max(0, cell.row() - FARTHEST_ABOVE); row--) {
      Optional<TypedCell> there = sheet.at(cell.column(), row);
      blank = there.isEmpty() ? blank + 1 : 0;
      if (blank > 1) {
        return Optional.empty();
      }
      if (there.isEmpty() || !there.get().isText()) {
        continue;
      }
      Optional<Label> label = label(there.get());
      if (label.isPresent()) {
        Label found = label.get();
        return Optional.of(
            unit.isEmpty() ? found : new Label(found.cell(), found.heading().in(unit)));
      }
      if (!grammar().isUnit(there.get().text())) {
        return Optional.empty();
      }
      unit = HeadingGrammar.bare(there.get().text());
    }
    return Optional.empty();
  }

  private Optional<Label> label(TypedCell cell) {
    return cell.isText() && !grammar().isUnit(cell.text())
        ? grammar().read(cell.text()).map(heading -> new Label(cell, heading))
        : Optional.empty();
  }

  /** What names the values of a range: the text above a column, or left of a row. */
  Optional<Label> of(CellRange range) {
    return range.height() >= range.width()
        ? above(range.first()).or(() -> left(range.first()))
        : left(range.first()).or(() -> above(range.first()));
  }
}
