package tenthmark.checker.reading.layout;

import java.util.List;
import tenthmark.checker.course.Course;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.workbook.Grid;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.CellAddress;

/** What is read of a table, one line a record, such as {@code B2 ± C2 mm}. */
final class RecordsRead {

  private static final Catalogue FUNCTIONS = Catalogue.load();

  private RecordsRead() {}

  static List<String> of(Grid grid) {
    return records(grid).stream().map(RecordsRead::line).toList();
  }

  static List<MeasurementRecord> records(Grid grid) {
    return Inspection.of(grid.workbook(), FUNCTIONS, Course.PLAIN).records();
  }

  private static String line(MeasurementRecord found) {
    String size =
        found
            .place(Field.UNCERTAINTY)
            .map(CellAddress::place)
            .or(() -> found.uncertainty().map(String::valueOf))
            .orElse("?");
    String value = found.place(Field.VALUE).map(CellAddress::place).orElse("?");
    return (value + " ± " + size + " " + found.unit()).strip();
  }
}
