package tenthmark.checker.record;

import java.util.List;

/** Records that stand under one row of headings, or that were found by the functions they use. */
public record RecordTable(List<MeasurementRecord> records) {

  /** Copies the records. */
  public RecordTable {
    records = List.copyOf(records);
  }
}
