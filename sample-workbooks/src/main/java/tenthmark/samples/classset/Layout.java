package tenthmark.samples.classset;

import static tenthmark.samples.lab.RecordColumns.DIVISION;
import static tenthmark.samples.lab.RecordColumns.ENDS;
import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.PHYSICAL;
import static tenthmark.samples.lab.RecordColumns.QUANTITY;
import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.READING;
import static tenthmark.samples.lab.RecordColumns.RESULT;
import static tenthmark.samples.lab.RecordColumns.SPACING;
import static tenthmark.samples.lab.RecordColumns.SYMBOL;
import static tenthmark.samples.lab.RecordColumns.TIMING;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;
import static tenthmark.samples.lab.RecordColumns.UNIT;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tenthmark.samples.plan.Block;
import tenthmark.samples.plan.Column;
import tenthmark.samples.plan.GroupedTable;
import tenthmark.samples.plan.Lines;
import tenthmark.samples.plan.Row;
import tenthmark.samples.plan.SheetPlan;
import tenthmark.samples.plan.SidewaysTable;
import tenthmark.samples.plan.Table;

/** How a student lays out the records. */
enum Layout {
  FULL(
      "all columns, rationale in the last one",
      QUANTITY,
      SYMBOL,
      VALUE,
      UNIT,
      DIVISION,
      SPACING,
      ENDS,
      READING,
      PHYSICAL,
      INSTRUMENT,
      TIMING,
      UNCERTAINTY,
      RESULT,
      RATIONALE),
  HIDDEN(
      "all columns, an earlier attempt on a hidden sheet",
      QUANTITY,
      SYMBOL,
      VALUE,
      UNIT,
      DIVISION,
      SPACING,
      ENDS,
      READING,
      PHYSICAL,
      INSTRUMENT,
      TIMING,
      UNCERTAINTY,
      RESULT,
      RATIONALE) {
    @Override
    List<SheetPlan> sheets(List<Row> rows) {
      return List.of(
          super.sheets(rows).get(0),
          new SheetPlan(
              "Attempt",
              List.of(34),
              List.of(
                  new Lines(
                      "First attempt",
                      "B",
                      List.of(new Lines.Line("attempt", "Crank arm, axle to pedal hole", 171)))),
              true));
    }
  },
  MERGED(
      "all columns, a merged heading over the contributions",
      QUANTITY,
      SYMBOL,
      VALUE,
      UNIT,
      DIVISION,
      SPACING,
      ENDS,
      READING,
      PHYSICAL,
      INSTRUMENT,
      TIMING,
      UNCERTAINTY,
      RESULT,
      RATIONALE) {
    @Override
    List<Block> blocks(List<Row> rows) {
      return List.of(
          new GroupedTable(
              table("records", "Records", columns(), rows), "Contributions", READING, TIMING));
    }
  },
  SERIES(
      "all columns, with repeated readings and the points of a line in tables of their own",
      QUANTITY,
      SYMBOL,
      VALUE,
      UNIT,
      DIVISION,
      SPACING,
      ENDS,
      READING,
      PHYSICAL,
      INSTRUMENT,
      TIMING,
      UNCERTAINTY,
      RESULT,
      RATIONALE) {
    @Override
    List<Row> rows(List<Row> session) {
      return Series.with(session);
    }

    @Override
    List<Block> blocks(List<Row> rows) {
      return Series.blocks(columns(), rows);
    }
  },
  SIDEWAYS(
      "one column for each record",
      QUANTITY,
      SYMBOL,
      VALUE,
      UNIT,
      READING,
      PHYSICAL,
      INSTRUMENT,
      TIMING,
      UNCERTAINTY,
      RATIONALE) {
    @Override
    List<Block> blocks(List<Row> rows) {
      return List.of(new SidewaysTable("Records", columns(), rows));
    }

    @Override
    List<Integer> widths() {
      return List.of(14, 30, 30, 30, 30, 30, 30, 30);
    }
  },
  BELOW(
      "rationale in the row below each record",
      QUANTITY,
      SYMBOL,
      VALUE,
      UNIT,
      READING,
      PHYSICAL,
      INSTRUMENT,
      TIMING,
      UNCERTAINTY,
      RESULT) {
    @Override
    List<Block> blocks(List<Row> rows) {
      List<Row> both = new ArrayList<>();
      for (Row row : rows) {
        both.add(row);
        both.add(
            Row.of(row.key() + "-why")
                .with(QUANTITY, "Rationale")
                .with(SYMBOL, row.content(RATIONALE)));
      }
      return List.of(table("records", "Records", columns(), both));
    }
  },
  REORDERED(
      "uncertainty before its contributions, the quantity late",
      SYMBOL,
      UNIT.headed("Units"),
      VALUE.headed("Measured value"),
      UNCERTAINTY.headed("Total uncertainty"),
      READING,
      PHYSICAL,
      INSTRUMENT,
      TIMING,
      QUANTITY.headed("Measured quantity"),
      RATIONALE.headed("Reason")),
  HEADINGS(
      "lengths in a table of their own, with the unit in the headings",
      QUANTITY,
      SYMBOL,
      VALUE,
      UNIT,
      READING,
      PHYSICAL,
      INSTRUMENT,
      TIMING,
      UNCERTAINTY,
      RATIONALE) {
    @Override
    List<Block> blocks(List<Row> rows) {
      return List.of(
          table(
              "lengths",
              "Lengths",
              List.of(
                  QUANTITY,
                  SYMBOL,
                  VALUE.headed("Value (mm)"),
                  READING.headed("Reading (mm)"),
                  PHYSICAL.headed("Physical [mm]"),
                  UNCERTAINTY.headed("Uncertainty / mm"),
                  RATIONALE),
              rows.stream().filter(row -> LENGTHS.contains(row.key())).toList()),
          table(
              "others",
              "Everything else",
              columns(),
              rows.stream().filter(row -> !LENGTHS.contains(row.key())).toList()));
    }
  },
  PLAIN(
      "few columns, uncertainties without their contributions",
      QUANTITY,
      VALUE,
      UNCERTAINTY.headed("Error"),
      UNIT,
      RATIONALE.headed("Justification")),
  COMMAS(
      "few columns, decimal commas typed as text where no formula needs the number",
      QUANTITY,
      SYMBOL,
      VALUE,
      UNIT,
      UNCERTAINTY,
      RATIONALE) {
    @Override
    List<Block> blocks(List<Row> rows) {
      return super.blocks(rows.stream().map(Layout::withCommas).toList());
    }
  };

  private static final Set<String> LENGTHS = Set.of("L", "G");

  /** The density follows from the numbers of these. */
  private static final Set<String> IN_FORMULAS = Set.of("m", "V", "rho");

  private final String words;
  private final List<Column> columns;

  Layout(String words, Column... columns) {
    this.words = words;
    this.columns = List.of(columns);
  }

  String words() {
    return words;
  }

  List<Column> columns() {
    return columns;
  }

  /** The records of the session with what such a student has besides. */
  List<Row> rows(List<Row> session) {
    return session;
  }

  /** The sheets with the records. */
  List<SheetPlan> sheets(List<Row> rows) {
    return List.of(new SheetPlan("Bench", widths(), blocks(rows)));
  }

  /** How wide the columns of the sheet are, in characters. */
  List<Integer> widths() {
    return columns.stream().map(Column::width).toList();
  }

  /** The records as they stand on the sheet. */
  List<Block> blocks(List<Row> rows) {
    return List.of(table("records", "Records", columns, rows));
  }

  private static Table table(String key, String title, List<Column> columns, List<Row> rows) {
    return new Table(key, title, columns, rows);
  }

  private static Row withCommas(Row row) {
    if (IN_FORMULAS.contains(row.key())) {
      return row;
    }
    Row typed = row;
    for (Column column : List.of(VALUE, UNCERTAINTY)) {
      if (row.content(column) instanceof Number number) {
        typed = typed.with(column, number.toString().replace('.', ','));
      }
    }
    return typed;
  }
}
