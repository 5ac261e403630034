package tenthmark.samples.plan;

/** What stands on a sheet from one row on, in the order from top to bottom. */
public sealed interface Block permits Table, GroupedTable, SidewaysTable, Matrix, Lines {

  /** How many rows it takes. */
  int height();

  /** Says where its cells are when it begins in a row. */
  void locate(int row, Places places);

  /** Writes it from a row on. */
  void write(int row, BlockWriter writer);
}
