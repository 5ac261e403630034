package tenthmark.checker.record;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** The records under a row of headings. */
final class HeadedTable {

  /** So many blank rows end a table that no name delimits. */
  private static final int GAP = 2;

  private static final Pattern SUMMARY =
      Pattern.compile("(?:totals?|sum|average|mean)\\W*", Pattern.CASE_INSENSITIVE);

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final Sheet sheet;
  private final HeadingWords words;
  private final Headings headings;
  private final Optional<CellRange> extent;
  private final RationaleRows rationales;
  private final Set<Integer> rowsTaken = new HashSet<>();

  HeadedTable(
      Workbook workbook,
      Evaluation evaluation,
      Sheet sheet,
      HeadingWords words,
      Headings headings,
      Optional<CellRange> extent) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    this.sheet = sheet;
    this.words = words;
    this.headings = headings;
    this.extent = extent;
    this.rationales =
        new RationaleRows(evaluation, sheet, words, headings.left(), headings.right());
  }

  /** The rows that belong to the table, once it is read. */
  Set<Integer> rowsTaken() {
    return rowsTaken;
  }

  RecordTable read() {
    List<MeasurementRecord> records = new ArrayList<>();
    int last = extent.map(CellRange::bottom).orElse(sheet.lastRow());
    int blank = 0;
    for (int row = headings.row() + 1; row <= last; row++) {
      if (endsBefore(row, blank)) {
        break;
      }
      rowsTaken.add(row);
      blank = cells(row).isEmpty() ? blank + 1 : 0;
      if (isRecord(row)) {
        records.add(record(row));
      }
    }
    return new RecordTable(records);
  }

  private boolean endsBefore(int row, int blankRows) {
    if (!overlapping(row).isEmpty()) {
      return true;
    }
    if (extent.isPresent() || blankRows == 0) {
      return false;
    }
    boolean blank = cells(row).isEmpty();
    return blank ? blankRows + 1 >= GAP : blankRows >= GAP || !isPlainlyRecord(row);
  }

  private List<Headings> overlapping(int row) {
    return Headings.in(sheet, row, words).stream()
        .filter(other -> other.left() <= headings.right() && other.right() >= headings.left())
        .toList();
  }

  private List<Cell> cells(int row) {
    return sheet
        .cells(new CellRange(sheet.name(), headings.left(), row, headings.right(), row))
        .toList();
  }

  /** After a blank row a value alone does not continue the table: it may be a calculation. */
  private boolean isPlainlyRecord(int row) {
    return isRecord(row)
        && (holds(Field.UNIT, row)
            || holds(Field.UNCERTAINTY, row)
            || Field.CONTRIBUTIONS.stream().anyMatch(field -> holds(field, row)));
  }

  private boolean isRecord(int row) {
    if (isSummary(row) || rationales.isAt(row) || isPartOfMatrix(row)) {
      return false;
    }
    MeasurementRecord record = bare(row);
    return record.number(Field.VALUE).isPresent()
        || isUnknown(row)
        || holds(Field.QUANTITY, row)
            && (isTypedNumber(record, Field.UNCERTAINTY)
                || Field.CONTRIBUTIONS.stream().anyMatch(field -> isTypedNumber(record, field)));
  }

  /** A matrix over several columns is what one function says, not what a student wrote down. */
  private boolean isPartOfMatrix(int row) {
    return address(Field.VALUE, row)
        .flatMap(workbook::at)
        .map(Cell::content)
        .filter(
            content ->
                content instanceof Content.Formula formula
                    && formula.array().filter(area -> area.right() > area.left()).isPresent())
        .isPresent();
  }

  /** A value that is there but in error or not checkable. */
  private boolean isUnknown(int row) {
    return address(Field.VALUE, row)
        .map(evaluation::at)
        .filter(
            outcome ->
                outcome instanceof Outcome.NotCheckable
                    || outcome instanceof Outcome.Known known
                        && known.value() instanceof Value.Fault)
        .isPresent();
  }

  private static boolean isTypedNumber(MeasurementRecord record, Field field) {
    return !record.isFormula(field)
        && record.number(field).filter(number -> number != 0).isPresent();
  }

  private boolean holds(Field field, int row) {
    return bare(row).cell(field).isPresent();
  }

  private boolean isSummary(int row) {
    return cells(row).stream()
        .findFirst()
        .flatMap(rationales::text)
        .filter(text -> SUMMARY.matcher(text).matches())
        .isPresent();
  }

  private MeasurementRecord record(int row) {
    return record(row, rationale(row));
  }

  private MeasurementRecord bare(int row) {
    return record(row, Optional.empty());
  }

  private MeasurementRecord record(int row, Optional<Rationale> rationale) {
    Map<Field, CellAddress> places = new EnumMap<>(Field.class);
    headings
        .columns()
        .forEach((field, column) -> places.put(field, new CellAddress(sheet.name(), column, row)));
    return new MeasurementRecord(
        workbook, evaluation, places, headings.units(), cells(row), rationale);
  }

  private Optional<CellAddress> address(Field field, int row) {
    return Optional.ofNullable(headings.columns().get(field))
        .map(column -> new CellAddress(sheet.name(), column, row));
  }

  /** Its own column's text, else the row under the record. */
  private Optional<Rationale> rationale(int row) {
    Optional<Rationale> own =
        address(Field.RATIONALE, row)
            .map(
                place ->
                    new Rationale(place, workbook.at(place).flatMap(rationales::text).orElse("")));
    return own.filter(rationale -> !rationale.text().isEmpty())
        .or(() -> rationales.at(row + 1))
        .or(() -> own);
  }
}
