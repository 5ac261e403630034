package tenthmark.samples.lab;

import java.util.List;
import tenthmark.samples.plan.Column;

/** The columns that tables of records are made of. */
public final class RecordColumns {

  public static final Column QUANTITY = Column.given("quantity", "Quantity", 34);
  public static final Column SYMBOL = Column.given("symbol", "Symbol", 9);
  public static final Column VALUE = Column.typed("value", "Value", 11);
  public static final Column UNIT = Column.given("unit", "Unit", 8);
  public static final Column DIVISION = Column.typed("division", "Division", 10);
  public static final Column SPACING = Column.typed("spacing", "Spacing", 10);
  public static final Column ENDS = Column.typed("ends", "Ends", 7);
  public static final Column RESOLUTION = Column.typed("resolution", "Last digit", 11);
  public static final Column PERCENT = Column.typed("percent", "Maker's %", 11);
  public static final Column COUNTS = Column.typed("counts", "Maker's counts", 11);
  public static final Column NEAR_EDGE = Column.typed("near", "Soft near edge", 11);
  public static final Column FAR_EDGE = Column.typed("far", "Soft far edge", 11);
  public static final Column READING = Column.typed("reading", "Reading", 10);
  public static final Column PHYSICAL = Column.typed("physical", "Physical", 10);
  public static final Column INSTRUMENT = Column.typed("instrument", "Instrument", 11);
  public static final Column TIMING = Column.typed("timing", "Timing", 9);
  public static final Column REPEAT = Column.typed("repeat", "Repeat", 9);
  public static final Column UNCERTAINTY = Column.given("uncertainty", "Uncertainty", 13);
  public static final Column RESULT = Column.given("result", "Result", 24);
  public static final Column RATIONALE = Column.typed("rationale", "Rationale", 58);

  /** The columns of a record whose uncertainty is not made of contributions. */
  public static final List<Column> CALCULATED =
      List.of(QUANTITY, SYMBOL, VALUE, UNIT, UNCERTAINTY, RESULT, RATIONALE);

  /** The columns of records read off scales and displays. */
  static final List<Column> SCALES_AND_DISPLAYS =
      List.of(
          QUANTITY,
          SYMBOL,
          VALUE,
          UNIT,
          DIVISION,
          SPACING,
          RESOLUTION,
          PERCENT,
          COUNTS,
          READING,
          INSTRUMENT,
          UNCERTAINTY,
          RESULT,
          RATIONALE);

  private RecordColumns() {}
}
