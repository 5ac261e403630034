package tenthmark.checker.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import tenthmark.checker.reading.TableGuide;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** How tables were read, as a profile can say it: columns or rows with their roles. */
final class TablesStart {

  private final ToIntFunction<CellAddress> line;
  private final ToIntFunction<CellAddress> place;
  private final boolean across;

  private TablesStart(
      ToIntFunction<CellAddress> line, ToIntFunction<CellAddress> place, boolean across) {
    this.line = line;
    this.place = place;
    this.across = across;
  }

  /** Records one below the other. */
  private static final TablesStart DOWN =
      new TablesStart(CellAddress::row, CellAddress::column, false);

  /** Records side by side. */
  private static final TablesStart ACROSS =
      new TablesStart(CellAddress::column, CellAddress::row, true);

  /** The guide of each table whose records are all laid out alike. */
  static List<TableGuide> of(List<RecordTable> tables) {
    return tables.stream().flatMap(table -> guide(table.records()).stream()).toList();
  }

  private static Optional<TableGuide> guide(List<MeasurementRecord> records) {
    Optional<TableGuide> down = DOWN.read(records);
    Optional<TableGuide> across = ACROSS.read(records);
    return down.isPresent() && across.isPresent()
        ? (across.get().fields().size() > down.get().fields().size() ? across : down)
        : down.or(() -> across);
  }

  /** Nothing where a place has two parts, or a part two places. */
  private Optional<TableGuide> read(List<MeasurementRecord> records) {
    Map<Integer, Field> fields = new TreeMap<>();
    List<CellAddress> cells = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    for (MeasurementRecord measurement : records) {
      CellAddress anchor = measurement.placeOrValue(Field.VALUE);
      lines.add(line.applyAsInt(anchor));
      for (Field field : Field.values()) {
        Optional<CellAddress> cell =
            measurement
                .place(field)
                .filter(own -> own.sheet().equals(anchor.sheet()))
                .filter(own -> line.applyAsInt(own) == line.applyAsInt(anchor));
        if (cell.isPresent()) {
          cells.add(cell.get());
          Field before = fields.putIfAbsent(place.applyAsInt(cell.get()), field);
          if (before != null && before != field) {
            return Optional.empty();
          }
        }
      }
    }
    boolean alike =
        fields.values().stream().distinct().count() == fields.size()
            && lines.stream().distinct().count() == lines.size()
            && cells.stream().map(CellAddress::sheet).distinct().count() == 1;
    boolean told = fields.containsValue(Field.VALUE) || fields.containsValue(Field.RESULT);
    return alike && told && fields.size() > 1
        ? Optional.of(new TableGuide(around(cells), across, fields))
        : Optional.empty();
  }

  private static CellRange around(List<CellAddress> cells) {
    return new CellRange(
        cells.get(0).sheet(),
        cells.stream().mapToInt(CellAddress::column).min().orElseThrow(),
        cells.stream().mapToInt(CellAddress::row).min().orElseThrow(),
        cells.stream().mapToInt(CellAddress::column).max().orElseThrow(),
        cells.stream().mapToInt(CellAddress::row).max().orElseThrow());
  }
}
