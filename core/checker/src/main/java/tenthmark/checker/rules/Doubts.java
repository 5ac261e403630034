package tenthmark.checker.rules;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tenthmark.checker.carried.Derivation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.Taken;
import tenthmark.checker.record.Amount;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Message;

/**
 * What speaks against blaming a record: something in its table was not understood, or stands where
 * a missing part may stand, or the student's own formulas take numbers for an uncertainty that were
 * read as something else.
 */
final class Doubts {

  /** Numbers whose heading does not keep them from being an uncertainty. */
  private static final Set<NumberRole> OPEN =
      Set.of(NumberRole.RAW, NumberRole.CALCULATED, NumberRole.CONSTANT, NumberRole.STATISTIC);

  private static final int LONGEST_UNIT = 12;

  private final Inspection inspection;
  private final Map<MeasurementRecord, RecordTable> tables = new HashMap<>();
  private final Map<CellAddress, MeasurementRecord> holders = new HashMap<>();
  private final Map<CellAddress, Derivation.Followed> derivations = new HashMap<>();
  private final FormulaDoubts formulas;
  private final IdentityHashMap<RecordTable, Optional<Message>> unread = new IdentityHashMap<>();
  private final IdentityHashMap<RecordTable, List<CellAddress>> looseUnits =
      new IdentityHashMap<>();

  Doubts(Inspection inspection) {
    this.inspection = inspection;
    inspection
        .tables()
        .forEach(table -> table.records().forEach(record -> tables.put(record, table)));
    inspection
        .records()
        .forEach(record -> record.places().forEach(place -> holders.putIfAbsent(place, record)));
    inspection.derivations().stream()
        .filter(Derivation.Followed.class::isInstance)
        .map(Derivation.Followed.class::cast)
        .forEach(derivation -> derivations.put(derivation.claim().place(), derivation));
    this.formulas = new FormulaDoubts(inspection);
  }

  /** What was not understood, so that the part may be there; empty where there is no doubt. */
  Optional<Message> about(MeasurementRecord measurement, Field part) {
    RecordTable table = tables.get(measurement);
    return unread
        .computeIfAbsent(table, this::firstUnread)
        .or(() -> part == Field.UNCERTAINTY ? given(measurement, table) : Optional.empty())
        .or(() -> maybe(measurement, part, table));
  }

  /** What may be meant otherwise than a finding about a part of a record takes it. */
  Optional<Message> about(Finding finding) {
    MeasurementRecord measurement = holders.get(finding.cell());
    if (measurement == null) {
      return Optional.empty();
    }
    Optional<Derivation.Followed> derivation = Optional.ofNullable(derivations.get(finding.cell()));
    return Stream.concat(Stream.of(measurement), derivation.stream().flatMap(this::inputs))
        .flatMap(one -> misread(one).stream())
        .findFirst()
        .or(() -> formulas.about(measurement, finding.cell(), derivation));
  }

  private Stream<MeasurementRecord> inputs(Derivation.Followed derivation) {
    return derivation.carried().stream()
        .flatMap(carried -> carried.inputs().stream())
        .flatMap(input -> Stream.ofNullable(holders.get(input.cell())));
  }

  private Optional<Message> misread(MeasurementRecord measurement) {
    return unread
        .computeIfAbsent(tables.get(measurement), this::firstUnread)
        .or(() -> tooLarge(measurement));
  }

  /** A contribution that is not small beside its value is hardly one. */
  private static Optional<Message> tooLarge(MeasurementRecord measurement) {
    double value = measurement.number(Field.VALUE).map(Math::abs).orElse(0.0);
    return measurement.contributions().entrySet().stream()
        .filter(part -> value > 0 && Math.abs(part.getValue()) >= value / 2)
        .findFirst()
        .map(
            part ->
                Message.of(
                    "doubt.large",
                    part.getKey().inWords(),
                    measurement.placeOrValue(part.getKey()).place()));
  }

  private Optional<Message> firstUnread(RecordTable table) {
    return cells(table.area()).flatMap(cell -> notRead(cell).stream()).findFirst();
  }

  private Optional<Message> notRead(CellAddress cell) {
    return taken(cell)
        .filter(Taken.NotRead.class::isInstance)
        .map(taken -> Message.of("doubt.unread", cell.place(), ((Taken.NotRead) taken).why()));
  }

  /** A cell that may be the part; where the table has a place for it, no other cell is meant. */
  private Optional<Message> maybe(MeasurementRecord measurement, Field part, RecordTable table) {
    if (measurement.place(part).isPresent()) {
      return Optional.empty();
    }
    CellAddress value = measurement.placeOrValue(Field.VALUE);
    return switch (part) {
      case UNIT ->
          looseUnits.computeIfAbsent(table, this::looseUnits).stream()
              .filter(cell -> cell.row() == value.row() || cell.column() == value.column())
              .findFirst()
              .or(() -> unitInWords(value))
              .map(cell -> Message.of("doubt.unit", cell.place()))
              .or(() -> texts(table, value));
      case UNCERTAINTY ->
          cells(table.line(value))
              .filter(cell -> isOpen(cell) && isSmaller(cell, measurement))
              .findFirst()
              .map(cell -> Message.of("doubt.uncertainty", cell.place()));
      case SYMBOL, RATIONALE -> texts(table, value);
      default -> Optional.empty();
    };
  }

  /**
   * A text that may say a unit that nobody knows: one word right behind the value, or the text in
   * brackets that a heading ends with.
   */
  private Optional<CellAddress> unitInWords(CellAddress value) {
    CellAddress behind = new CellAddress(value.sheet(), value.column() + 1, value.row());
    Optional<CellAddress> word =
        text(behind).filter(text -> text.length() < LONGEST_UNIT && !text.contains(" ")).isPresent()
            ? Optional.of(behind)
            : Optional.empty();
    return word.or(() -> headings(value).filter(this::endsInBrackets).findFirst());
  }

  /** The nearest text above a cell and the nearest one left of it. */
  private Stream<CellAddress> headings(CellAddress value) {
    Stream<CellAddress> above =
        IntStream.iterate(value.row() - 1, row -> row >= 0, row -> row - 1)
            .mapToObj(row -> new CellAddress(value.sheet(), value.column(), row));
    Stream<CellAddress> before =
        IntStream.iterate(value.column() - 1, column -> column >= 0, column -> column - 1)
            .mapToObj(column -> new CellAddress(value.sheet(), column, value.row()));
    return Stream.of(above, before)
        .flatMap(cells -> cells.filter(this::isText).findFirst().stream());
  }

  private boolean endsInBrackets(CellAddress heading) {
    String text = text(heading).orElse("");
    int open = text.lastIndexOf('(');
    return text.endsWith(")") && open > 0 && text.length() - open < LONGEST_UNIT;
  }

  /** A number that stands apart from records with uncertainties may be given. */
  private Optional<Message> given(MeasurementRecord measurement, RecordTable table) {
    CellAddress value = measurement.placeOrValue(Field.VALUE);
    CellRange line = table.line(value);
    boolean apart = line.top() > table.area().top() && !table.across() && isBlankAbove(line);
    return apart
            && measurement.contributions().isEmpty()
            && table.records().stream()
                .anyMatch(record -> record.place(Field.UNCERTAINTY).isPresent())
        ? Optional.of(Message.of("doubt.given", value.place()))
        : Optional.empty();
  }

  private boolean isBlankAbove(CellRange line) {
    return cells(
            new CellRange(line.sheet(), line.left(), line.top() - 1, line.right(), line.top() - 1))
        .noneMatch(cell -> known(cell).filter(value -> !value.equals(Value.BLANK)).isPresent());
  }

  private Optional<String> text(CellAddress cell) {
    return known(cell)
        .filter(Value.Text.class::isInstance)
        .map(text -> ((Value.Text) text).text().strip())
        .filter(text -> !text.isEmpty());
  }

  /** A text in the record's line under a heading that was not understood either. */
  private Optional<Message> texts(RecordTable table, CellAddress value) {
    return cells(table.line(value))
        .filter(cell -> isText(cell) && taken(cell).isEmpty())
        .flatMap(cell -> heading(table, cell).stream().map(heading -> texts(cell, heading)))
        .findFirst();
  }

  private Message texts(CellAddress cell, CellAddress heading) {
    return Message.of("doubt.texts", cell.place(), text(heading).orElseThrow());
  }

  private Optional<CellAddress> heading(RecordTable table, CellAddress cell) {
    CellRange area = table.area();
    CellRange line =
        table.across()
            ? new CellRange(area.sheet(), area.left(), cell.row(), cell.column() - 1, cell.row())
            : new CellRange(area.sheet(), cell.column(), area.top(), cell.column(), cell.row() - 1);
    return cells(line).findFirst().filter(first -> isText(first) && taken(first).isEmpty());
  }

  private boolean isText(CellAddress cell) {
    return text(cell).isPresent();
  }

  /** The texts of a table that are units and were taken for nothing. */
  private List<CellAddress> looseUnits(RecordTable table) {
    return cells(table.area()).filter(cell -> taken(cell).isEmpty() && isUnit(cell)).toList();
  }

  private Stream<CellAddress> cells(CellRange area) {
    return inspection.workbook().sheet(area.sheet()).stream()
        .flatMap(sheet -> sheet.cells(area))
        .map(Cell::address);
  }

  private Optional<Taken> taken(CellAddress cell) {
    return inspection.reading().coverage().at(cell);
  }

  /** Whether a cell is part of nothing, or a number of which the table says little. */
  private boolean isOpen(CellAddress cell) {
    return taken(cell)
        .map(taken -> taken instanceof Taken.Other other && OPEN.contains(other.role()))
        .orElse(true);
  }

  /** Whether a number has the size of an uncertainty and is not what the value follows from. */
  private boolean isSmaller(CellAddress cell, MeasurementRecord measurement) {
    double value = measurement.number(Field.VALUE).map(Math::abs).orElse(0.0);
    return amount(cell)
            .map(amount -> Math.abs(amount.number()))
            .filter(size -> size > 0 && size < value)
            .isPresent()
        && !measurement.isCalculatedFrom(Set.of(cell));
  }

  private boolean isUnit(CellAddress cell) {
    return text(cell)
        .filter(
            text ->
                isUnit(text) || amount(cell).filter(amount -> isUnit(amount.unit())).isPresent())
        .isPresent();
  }

  private static boolean isUnit(String text) {
    return UnitReader.STANDARD.read(text).known().isPresent();
  }

  private Optional<Amount> amount(CellAddress cell) {
    return known(cell).flatMap(Amount::of);
  }

  private Optional<Value> known(CellAddress cell) {
    return inspection.evaluation().at(cell) instanceof Outcome.Known known
        ? Optional.of(known.value())
        : Optional.empty();
  }
}
