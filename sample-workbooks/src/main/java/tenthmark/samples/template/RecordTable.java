package tenthmark.samples.template;

import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.PHYSICAL;
import static tenthmark.samples.lab.RecordColumns.READING;
import static tenthmark.samples.lab.RecordColumns.TIMING;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;

import java.util.ArrayList;
import java.util.List;
import tenthmark.samples.lab.Records;
import tenthmark.samples.plan.Column;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.Table;

/**
 * A table for records of any kind: what is typed about the scale, the display, the edges or the
 * hand on the stopwatch decides which contributions a record has.
 */
final class RecordTable {

  static final Column QUANTITY = Column.typed("quantity", "Quantity", 28);
  static final Column SYMBOL = Column.typed("symbol", "Symbol", 9);
  static final Column VALUE = Column.typed("value", "Value", 10);
  static final Column UNIT = Column.typed("unit", "Unit", 8);
  static final Column DIVISION = Column.typed("division", "Division", 10);
  static final Column SPACING = Column.typed("spacing", "Spacing", 10);
  static final Column ENDS = Column.typed("ends", "Ends", 7);
  static final Column RESOLUTION = Column.typed("resolution", "Last digit", 11);
  static final Column PERCENT = Column.typed("percent", "Maker's %", 11);
  static final Column COUNTS = Column.typed("counts", "Maker's counts", 10);
  static final Column BOUND = Column.typed("bound", "Maker's bound", 10);
  static final Column NEAR_EDGE = Column.typed("near", "Soft near edge", 10);
  static final Column FAR_EDGE = Column.typed("far", "Soft far edge", 10);
  static final Column BY_HAND = Column.typed("hand", "Hand timed", 8);
  static final Column RATIONALE = Column.typed("rationale", "Rationale", 54);
  private static final Column RESULT = Column.given("result", "Result", 20);

  private static final List<Column> COLUMNS =
      List.of(
          QUANTITY,
          SYMBOL,
          VALUE,
          UNIT,
          UNCERTAINTY,
          RESULT,
          DIVISION,
          SPACING,
          ENDS,
          RESOLUTION,
          PERCENT,
          COUNTS,
          BOUND,
          NEAR_EDGE,
          FAR_EDGE,
          BY_HAND,
          calculated(READING),
          calculated(PHYSICAL),
          calculated(INSTRUMENT),
          calculated(TIMING),
          RATIONALE);

  private static final int ROWS = 10;

  private RecordTable() {}

  /** The sheet with the table, in which the first rows are examples. */
  static SheetPlan sheet(List<Row> examples) {
    List<Row> rows = new ArrayList<>(examples);
    while (rows.size() < ROWS) {
      rows.add(record("record" + (rows.size() + 1)));
    }
    return SheetPlan.of("Records", new Table("records", "Records", COLUMNS, rows));
  }

  /** A record that nothing is typed into yet. */
  static Row record(String key) {
    return Records.totalled(key)
        .with(
            READING,
            "=IF(OR({division}=\"\",{spacing}=\"\"),\"\","
                + "LAB_READING({division},{spacing},IF({ends}=\"\",1,{ends})))")
        .with(PHYSICAL, "=IF(COUNT({near},{far})=0,\"\",LAB_FUZZY({near},{far}))")
        .with(
            INSTRUMENT,
            "=IF(COUNT({value},{resolution})=2,"
                + "LAB_DISPLAY({resolution},{value},{percent},IF({counts}=\"\",1,{counts})),"
                + "IF({bound}=\"\",\"\",{bound}))")
        .with(TIMING, "=IF({hand}=\"\",\"\",LAB_HANDTIMED())");
  }

  /** One of a length that is read off a scale at both ends. */
  static Row length(String key, String quantity, double value, double division, double edge) {
    return record(key)
        .with(QUANTITY, quantity)
        .with(SYMBOL, key)
        .with(VALUE, value)
        .with(UNIT, "mm")
        .with(DIVISION, division)
        .with(SPACING, "fine")
        .with(ENDS, 2)
        .with(NEAR_EDGE, edge)
        .with(FAR_EDGE, edge);
  }

  private static Column calculated(Column contribution) {
    return Column.given(contribution.key(), contribution.heading(), contribution.width());
  }
}
