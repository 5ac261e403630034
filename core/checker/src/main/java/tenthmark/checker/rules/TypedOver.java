package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** A typed-in number or text where the cells around it have formulas. */
@AutoService(Rule.class)
public final class TypedOver implements Rule {

  private static final List<Field> COMPUTED = List.of(Field.UNCERTAINTY, Field.RESULT);

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("typed-over", Severity.WARNING);

  /** Copies in a row that a number before or after them is set against. */
  private static final int COPIES_AT_END = 3;

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public boolean restsOnTables() {
    return true;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    List<Finding> findings = new ArrayList<>();
    Set<CellAddress> computed = new HashSet<>();
    for (RecordTable table : inspection.tables()) {
      for (Field field : COMPUTED) {
        columns(table, field)
            .forEach(records -> findings.addAll(inColumn(records, field, inspection)));
      }
      table
          .records()
          .forEach(
              record ->
                  Arrays.stream(Field.values())
                      .filter(field -> field != Field.VALUE)
                      .flatMap(field -> record.place(field).stream())
                      .forEach(computed::add));
    }
    inspection
        .sheets()
        .flatMap(sheet -> sheet.cells().filter(cell -> isHole(sheet, cell, inspection)))
        .filter(cell -> !computed.contains(cell.address()))
        .forEach(cell -> findings.add(finding(cell, Message.of("typed-over.sides"))));
    return findings;
  }

  /** The records of a table whose parts stand one below or beside the other. */
  private static Collection<List<MeasurementRecord>> columns(RecordTable table, Field field) {
    return table.records().stream()
        .filter(record -> record.cell(field).isPresent())
        .collect(
            Collectors.groupingBy(
                record -> {
                  CellAddress place = record.place(field).orElseThrow();
                  return table.across() ? place.row() : place.column();
                }))
        .values();
  }

  /** At least two others of the same kind must have copies of one formula there, and most. */
  private static List<Finding> inColumn(
      List<MeasurementRecord> filled, Field field, Inspection inspection) {
    List<Finding> findings = new ArrayList<>();
    for (List<MeasurementRecord> alike : kinds(filled, field)) {
      int formulas = mostCopies(alike, field, inspection);
      if (formulas < 2 || formulas <= alike.stream().filter(r -> !r.isFormula(field)).count()) {
        continue;
      }
      alike.stream()
          .filter(record -> !record.isFormula(field))
          .filter(record -> field == Field.RESULT || record.number(field).isPresent())
          .forEach(
              record ->
                  findings.add(
                      finding(
                          record.cell(field).orElseThrow(),
                          Message.of("typed-over.column", field.inWords(), formulas))));
    }
    return findings;
  }

  /**
   * The records by kind: a measured value's uncertainty may be typed where a calculated one's is a
   * formula, and one without contributions where others are totals.
   */
  private static Collection<List<MeasurementRecord>> kinds(
      List<MeasurementRecord> filled, Field field) {
    return field == Field.RESULT
        ? List.of(filled)
        : filled.stream()
            .collect(
                Collectors.groupingBy(
                    record ->
                        List.of(record.isFormula(Field.VALUE), record.contributions().isEmpty())))
            .values();
  }

  /** How often one formula stands there, copied from record to record. */
  private static int mostCopies(
      List<MeasurementRecord> records, Field field, Inspection inspection) {
    Map<String, Integer> counts = new HashMap<>();
    for (MeasurementRecord record : records) {
      record
          .cell(field)
          .flatMap(cell -> inspection.evaluation().relativeForm(cell))
          .ifPresent(form -> counts.merge(form, 1, Integer::sum));
    }
    return counts.values().stream().mapToInt(count -> count).max().orElse(0);
  }

  private static boolean isHole(Sheet sheet, Cell cell, Inspection inspection) {
    if (!(cell.content() instanceof Content.Number)) {
      return false;
    }
    int column = cell.address().column();
    int row = cell.address().row();
    return isBetweenCopies(cell, sheet.at(column, row - 1), sheet.at(column, row + 1), inspection)
        || isBetweenCopies(cell, sheet.at(column - 1, row), sheet.at(column + 1, row), inspection)
        || isBeforeCopies(cell, sheet, 1, inspection)
        || isBeforeCopies(cell, sheet, -1, inspection);
  }

  /**
   * What one of the copies is computed from is an input beside them, and copies that are computed
   * from nothing, as the root of three, are numbers too.
   */
  private static boolean isBetweenCopies(
      Cell cell, Optional<Cell> one, Optional<Cell> other, Inspection inspection) {
    List<CellAddress> inputs =
        sameForm(one, other, inspection)
            ? Stream.of(one, other)
                .flatMap(copy -> inspection.evaluation().precedents(copy.orElseThrow()).stream())
                .map(Cell::address)
                .toList()
            : List.of();
    return !inputs.isEmpty() && !inputs.contains(cell.address());
  }

  /**
   * The first or last of a column whose copies take everything from their own rows, so that no
   * start value is needed, where its own row has numbers in all those columns.
   */
  private static boolean isBeforeCopies(Cell cell, Sheet sheet, int step, Inspection inspection) {
    CellAddress place = cell.address();
    List<Cell> copies =
        IntStream.rangeClosed(1, COPIES_AT_END)
            .mapToObj(i -> sheet.at(place.column(), place.row() + i * step))
            .flatMap(Optional::stream)
            .toList();
    boolean same =
        copies.size() == COPIES_AT_END
            && copies.stream()
                .allMatch(copy -> inspection.evaluation().areCopies(copies.get(0), copy));
    if (!same) {
      return false;
    }
    List<CellAddress> inputs =
        inspection.evaluation().precedents(copies.get(0)).stream().map(Cell::address).toList();
    List<CellAddress> own =
        inputs.stream()
            .filter(input -> input.row() == copies.get(0).address().row())
            .filter(input -> input.sheet().equals(place.sheet()))
            .toList();
    boolean fromOwnRow =
        inspection.evaluation().relativeTokens(copies.get(0)).stream()
            .filter(token -> token.contains("["))
            .allMatch(token -> token.endsWith("[0]"));
    return fromOwnRow
        && !own.isEmpty()
        && own.stream()
            .map(input -> new CellAddress(place.sheet(), input.column(), place.row()))
            .allMatch(input -> inspection.evaluation().number(input).isPresent());
  }

  private static boolean sameForm(Optional<Cell> one, Optional<Cell> other, Inspection inspection) {
    return one.isPresent()
        && other.isPresent()
        && inspection.evaluation().areCopies(one.get(), other.get());
  }

  private static Finding finding(Cell cell, Message expected) {
    Message content =
        cell.content() instanceof Content.Number number
            ? Message.of("typed-over.number", Numbers.show(number.value()))
            : Message.of("typed-over.text");
    return DECLARATION.finding(cell.address(), content, expected);
  }
}
