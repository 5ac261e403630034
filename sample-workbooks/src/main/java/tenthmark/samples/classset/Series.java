package tenthmark.samples.classset;

import static tenthmark.samples.lab.RecordColumns.QUANTITY;
import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.RESULT;
import static tenthmark.samples.lab.RecordColumns.SYMBOL;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;
import static tenthmark.samples.lab.RecordColumns.UNIT;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import tenthmark.samples.plan.Block;
import tenthmark.samples.plan.Column;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.Table;

/** Repeated times of the swings, and the points of a spring's line, as some students add them. */
final class Series {

  private static final Column SWING = Column.given("swing", "Swings", 34);
  private static final Column SECONDS = Column.typed("seconds", "Seconds", 9);
  private static final Column STRETCH = Column.typed("stretch", "Stretch / mm", 34);
  private static final Column FORCE = Column.typed("force", "Force / N", 9);

  private static final String TIME = "t";
  private static final String SWINGS = "swing";
  private static final String POINTS = "point";

  /** Hundredths of a second about the mean; together they are nothing. */
  private static final int[] SCATTER = {3, -5, 8, -2, 1, -5};

  /** Hundredths of a newton beside the line. */
  private static final int[] BESIDE = {5, -4, 6, -3, 2};

  private Series() {}

  /** The records, the time as a mean and the spring's rate as a slope, and the rows behind them. */
  static List<Row> with(List<Row> session) {
    List<Row> rows = new ArrayList<>();
    double time = 0;
    for (Row row : session) {
      if (row.key().equals(TIME)) {
        time = (Double) row.content(VALUE);
        rows.add(row.with(VALUE, "=AVERAGE({swings.seconds})"));
      } else {
        rows.add(row);
      }
    }
    rows.add(
        Row.of("k")
            .with(QUANTITY, "Brake lever, spring rate")
            .with(SYMBOL, "k")
            .with(VALUE, "=SLOPE({points.force},{points.stretch})")
            .with(UNIT, "N/mm")
            .with(UNCERTAINTY, "=LAB_SLOPEERROR({points.stretch},{points.force})")
            .with(RESULT, "=LAB_RESULT({value},{uncertainty},{unit})")
            .with(RATIONALE, "The scatter of the points about the line.")
            .shown("0.000"));
    for (int i = 0; i < SCATTER.length; i++) {
      rows.add(
          Row.of(SWINGS + (i + 1))
              .with(SWING, "ten swings, time " + (i + 1))
              .with(SECONDS, sum(time, SCATTER[i])));
    }
    for (int i = 0; i < BESIDE.length; i++) {
      int stretch = 2 * (i + 1);
      rows.add(
          Row.of(POINTS + (i + 1))
              .with(STRETCH, stretch)
              .with(FORCE, sum(0, Math.toIntExact(Math.round(stretch * time * 6)) + BESIDE[i])));
    }
    return rows;
  }

  /** In decimals, so that no bits beyond the last digit are typed in. */
  private static double sum(double number, int hundredths) {
    return BigDecimal.valueOf(number).add(BigDecimal.valueOf(hundredths, 2)).doubleValue();
  }

  /** The records and, in tables of their own, the rows behind them. */
  static List<Block> blocks(List<Column> columns, List<Row> rows) {
    return List.of(
        new Table(
            "records",
            "Records",
            columns,
            rows.stream().filter(row -> !isOf(SWINGS, row) && !isOf(POINTS, row)).toList()),
        new Table(
            "swings",
            "Wheel, ten swings six times",
            List.of(SWING, SECONDS),
            rows.stream().filter(row -> isOf(SWINGS, row)).toList()),
        new Table(
            "points",
            "Brake lever, return spring",
            List.of(STRETCH, FORCE),
            rows.stream().filter(row -> isOf(POINTS, row)).toList()));
  }

  private static boolean isOf(String series, Row row) {
    return row.key().startsWith(series);
  }
}
