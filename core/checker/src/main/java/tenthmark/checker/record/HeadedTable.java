package tenthmark.checker.record;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** The records under a row of headings, or beside a column of them. */
final class HeadedTable {

  /** So many blank lines end a table that no name delimits. */
  private static final int GAP = 2;

  private static final Pattern SUMMARY =
      Pattern.compile(
          "(?:totals?|sum|average|mean"
              + "|summe|gesamt|mittelwert|durchschnitt|somme|totaux|moyenne"
              + "|suma|totales|media|promedio)\\W*",
          Pattern.CASE_INSENSITIVE);

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final Lines lines;
  private final Headings headings;
  private final Map<Integer, List<Headings>> headingsByLine;
  private final Optional<CellRange> extent;
  private final RationaleRows rationales;
  private final Set<Integer> linesTaken = new HashSet<>();

  HeadedTable(
      Workbook workbook,
      Evaluation evaluation,
      Lines lines,
      HeadingWords words,
      Headings headings,
      Map<Integer, List<Headings>> headingsByLine,
      Optional<CellRange> extent) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    this.lines = lines;
    this.headings = headings;
    this.headingsByLine = headingsByLine;
    this.extent = extent;
    this.rationales =
        new RationaleRows(evaluation, lines, words, headings.left(), headings.right());
  }

  /** The lines that belong to the table, once it is read. */
  Set<Integer> linesTaken() {
    return linesTaken;
  }

  RecordTable read() {
    Map<Integer, MeasurementRecord> records = new TreeMap<>();
    int last = extent.map(CellRange::bottom).orElse(lines.last());
    int blank = 0;
    for (int line = headings.line() + 1; line <= last; line++) {
      if (endsBefore(line, blank)) {
        break;
      }
      linesTaken.add(line);
      blank = cells(line).isEmpty() ? blank + 1 : 0;
      MeasurementRecord record = record(line);
      if (isRecord(line, record)) {
        records.put(line, record);
      }
    }
    boolean beneath = records.keySet().stream().anyMatch(line -> rationales.isAt(line + 1));
    return new RecordTable(
        records.entrySet().stream()
            .map(
                found ->
                    rationale(found.getKey(), beneath)
                        .map(found.getValue()::explained)
                        .orElse(found.getValue()))
            .toList());
  }

  private boolean endsBefore(int line, int blankLines) {
    if (!overlapping(line).isEmpty()) {
      return true;
    }
    if (extent.isPresent() || blankLines == 0) {
      return false;
    }
    boolean blank = cells(line).isEmpty();
    boolean goesOn = isPlainlyRecord(line) || isPrepared(line);
    return blank ? blankLines + 1 >= GAP : blankLines >= GAP || !goesOn;
  }

  private List<Headings> overlapping(int line) {
    return headingsByLine.getOrDefault(line, List.of()).stream()
        .filter(other -> other.left() <= headings.right() && other.right() >= headings.left())
        .toList();
  }

  private List<Cell> cells(int line) {
    return lines.cells(line, headings.left(), headings.right());
  }

  /** After a blank line a value alone does not continue the table: it may be a calculation. */
  private boolean isPlainlyRecord(int line) {
    MeasurementRecord record = record(line);
    return isRecord(line, record)
        && (record.cell(Field.UNIT).isPresent()
            || record.cell(Field.UNCERTAINTY).isPresent()
            || Field.CONTRIBUTIONS.stream().anyMatch(field -> record.cell(field).isPresent()));
  }

  /** A line that waits for its value. */
  private boolean isPrepared(int line) {
    MeasurementRecord record = record(line);
    return record.text(Field.QUANTITY).isPresent() && record.text(Field.UNIT).isPresent();
  }

  private boolean isRecord(int line, MeasurementRecord record) {
    if (isSummary(line) || rationales.isAt(line) || isPartOfMatrix(line)) {
      return false;
    }
    return record.number(Field.VALUE).isPresent()
        || isUnknown(line)
        || (record.cell(Field.QUANTITY).isPresent()
            && (isTypedNumber(record, Field.UNCERTAINTY)
                || Field.CONTRIBUTIONS.stream().anyMatch(field -> isTypedNumber(record, field))));
  }

  /** A matrix over several columns is what one function says, not what a student wrote down. */
  private boolean isPartOfMatrix(int line) {
    return address(Field.VALUE, line)
        .flatMap(workbook::at)
        .map(Cell::content)
        .filter(
            content ->
                content instanceof Content.Formula formula
                    && formula.array().filter(area -> area.right() > area.left()).isPresent())
        .isPresent();
  }

  /** A value that is there but in error or not checkable. */
  private boolean isUnknown(int line) {
    return address(Field.VALUE, line)
        .map(evaluation::at)
        .filter(
            outcome ->
                outcome instanceof Outcome.NotCheckable
                    || (outcome instanceof Outcome.Known known
                        && known.value() instanceof Value.Fault))
        .isPresent();
  }

  private static boolean isTypedNumber(MeasurementRecord record, Field field) {
    return !record.isFormula(field)
        && record.number(field).filter(number -> number != 0).isPresent();
  }

  private boolean isSummary(int line) {
    return cells(line).stream()
        .findFirst()
        .flatMap(rationales::text)
        .filter(text -> SUMMARY.matcher(text).matches())
        .isPresent();
  }

  private MeasurementRecord record(int line) {
    Map<Field, CellAddress> places = new EnumMap<>(Field.class);
    headings.places().forEach((field, place) -> places.put(field, lines.address(line, place)));
    return new MeasurementRecord(
        workbook, evaluation, places, headings.units(), cells(line), Optional.empty());
  }

  private Optional<CellAddress> address(Field field, int line) {
    return Optional.ofNullable(headings.places().get(field))
        .map(place -> lines.address(line, place));
  }

  /**
   * Its own column's text, else the line after the record, else a remark.
   *
   * @param beneath whether rationales of this table stand below the records, so that a few words do
   */
  private Optional<Rationale> rationale(int line, boolean beneath) {
    Optional<Rationale> own = text(Field.RATIONALE, line);
    return own.filter(HeadedTable::saysSomething)
        .or(() -> rationales.at(line + 1))
        .or(() -> beneath ? rationales.fewWordsAt(line + 1) : Optional.empty())
        .or(() -> text(Field.REMARK, line).filter(HeadedTable::saysSomething))
        .or(() -> own);
  }

  private Optional<Rationale> text(Field field, int line) {
    return address(field, line)
        .map(
            place -> new Rationale(place, workbook.at(place).flatMap(rationales::text).orElse("")));
  }

  private static boolean saysSomething(Rationale rationale) {
    return !rationale.text().isEmpty();
  }
}
