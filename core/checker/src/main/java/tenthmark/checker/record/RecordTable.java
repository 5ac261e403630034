package tenthmark.checker.record;

import java.util.List;

/**
 * Records that stand together on a sheet.
 *
 * @param strange headings over numbers among them that were not understood
 */
public record RecordTable(List<MeasurementRecord> records, List<String> strange) {

  /** Copies the lists. */
  public RecordTable {
    records = List.copyOf(records);
    strange = List.copyOf(strange);
  }
}
