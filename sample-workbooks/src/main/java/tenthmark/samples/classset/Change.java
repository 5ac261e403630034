package tenthmark.samples.classset;

import java.util.List;
import tenthmark.samples.plan.Column;
import tenthmark.samples.plan.Row;

/** What a mistake does to the records. */
sealed interface Change {

  /** The records with the change. */
  List<Row> in(List<Row> rows);

  /** Other content in one cell; empty for nothing. */
  record Put(String row, Column column, Object content) implements Change {
    @Override
    public List<Row> in(List<Row> rows) {
      return rows.stream()
          .map(own -> own.key().equals(row) ? own.with(column, content) : own)
          .toList();
    }
  }

  /** Another number typed in after the program had calculated for the last time. */
  record Retype(String row, Column column, double number) implements Change {
    @Override
    public List<Row> in(List<Row> rows) {
      return new Put(row, column, number).in(rows);
    }
  }

  /** A record left out. */
  record Drop(String row) implements Change {
    @Override
    public List<Row> in(List<Row> rows) {
      return rows.stream().filter(own -> !own.key().equals(row)).toList();
    }
  }
}
