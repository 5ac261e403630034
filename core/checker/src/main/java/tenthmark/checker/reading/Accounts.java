package tenthmark.checker.reading;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.checker.reading.layout.NumberRoles;
import tenthmark.checker.reading.layout.Resolver;
import tenthmark.checker.reading.layout.Surroundings;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Message;

/** Accounts for every number of a workbook once its records are known. */
final class Accounts {

  /** Formulas that refer to more than this many cells name no single ones. */
  private static final int MOST_REFERRED = 200_000;

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final Surroundings surroundings;
  private final List<TypedSheet> sheets;
  private final Map<CellAddress, NumberRole> roles = new HashMap<>();
  private final Map<CellAddress, String> strange = new HashMap<>();
  private final Map<CellAddress, Field> headings;
  private final Set<CellAddress> reasons;
  private final Set<CellAddress> referred = new HashSet<>();

  Accounts(
      Workbook workbook,
      Evaluation evaluation,
      Surroundings surroundings,
      List<TypedSheet> sheets,
      List<Resolver.Settled> settled,
      Map<CellAddress, Field> headings,
      Set<CellAddress> reasons) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    this.surroundings = surroundings;
    this.sheets = sheets;
    this.headings = headings;
    this.reasons = reasons;
    for (Resolver.Settled table : settled) {
      table.proposal().roles().forEach(roles::putIfAbsent);
      table.proposal().strange().forEach(strange::putIfAbsent);
    }
  }

  Coverage of(List<RecordTable> tables) {
    Map<CellAddress, Taken> parts = parts(tables);
    refer();
    Map<CellAddress, Taken> taken = new LinkedHashMap<>();
    Map<Taken, Taken> shared = new HashMap<>();
    for (TypedSheet sheet : sheets) {
      for (TypedCell cell : sheet.cells()) {
        taken(cell, sheet, parts)
            .ifPresent(
                what ->
                    taken.put(cell.address(), shared.computeIfAbsent(what, Function.identity())));
      }
    }
    return new Coverage(taken);
  }

  private static Map<CellAddress, Taken> parts(List<RecordTable> tables) {
    Map<CellAddress, Taken> parts = new HashMap<>();
    for (RecordTable table : tables) {
      for (MeasurementRecord measurement : table.records()) {
        for (Field field : Field.values()) {
          measurement
              .place(field)
              .ifPresent(cell -> parts.putIfAbsent(cell, new Taken.Part(measurement, field)));
        }
      }
    }
    return parts;
  }

  /** Notes the cells that formulas refer to. */
  private void refer() {
    int count = 0;
    for (TypedSheet sheet : sheets) {
      for (TypedCell cell : sheet.cells()) {
        for (CellRange range : evaluation.references(cell.cell())) {
          count += refer(range, MOST_REFERRED - count);
        }
      }
    }
  }

  private int refer(CellRange range, int most) {
    Optional<Sheet> sheet = most <= 0 ? Optional.empty() : workbook.sheet(range.sheet());
    if (sheet.isEmpty()) {
      return 0;
    }
    int count = 0;
    var cells = sheet.get().cellsIn(range);
    while (cells.hasNext() && count < most) {
      Cell next = cells.next();
      referred.add(next.address());
      count++;
    }
    return count;
  }

  private Optional<Taken> taken(TypedCell cell, TypedSheet sheet, Map<CellAddress, Taken> parts) {
    CellAddress place = cell.address();
    Taken part = parts.get(place);
    if (part != null) {
      return Optional.of(part);
    }
    if (cell.isText()) {
      if (headings.containsKey(place)) {
        return Optional.of(new Taken.Heading(headings.get(place)));
      }
      return reasons.contains(place) ? Optional.of(new Taken.Reason()) : Optional.empty();
    }
    return cell.isNumber() ? Optional.of(number(cell, sheet)) : Optional.empty();
  }

  private Taken number(TypedCell cell, TypedSheet sheet) {
    Optional<NumberRole> byFormula = byFormula(cell);
    NumberRole known = roles.get(cell.address());
    if (byFormula.isPresent() && (known == null || known == NumberRole.CALCULATED)) {
      return new Taken.Other(byFormula.get());
    }
    if (known != null) {
      return new Taken.Other(known);
    }
    if (strange.containsKey(cell.address()) && !referred.contains(cell.address())) {
      return new Taken.NotRead(why(strange.get(cell.address())));
    }
    if (cell.isFormula()) {
      return new Taken.Other(NumberRole.CALCULATED);
    }
    return labelled(cell, sheet)
        .map(role -> (Taken) new Taken.Other(role))
        .orElseGet(() -> unnamed(cell, sheet));
  }

  private static Message why(String heading) {
    return heading.isBlank()
        ? Message.of("reading.number")
        : Message.of("reading.heading", heading);
  }

  private static Optional<NumberRole> byFormula(TypedCell cell) {
    if (!(cell.cell().content() instanceof Content.Formula)) {
      return Optional.empty();
    }
    List<String> functions = NativeFunctions.of(cell.cell());
    String first = functions.isEmpty() ? "" : functions.get(0);
    if (NativeFunctions.COUNTS.contains(first)) {
      return Optional.of(NumberRole.COUNT);
    }
    return NativeFunctions.SPREADS.contains(first) || NativeFunctions.STATISTICS.contains(first)
        ? Optional.of(NumberRole.STATISTIC)
        : Optional.empty();
  }

  /** What the words beside a number say. */
  private Optional<NumberRole> labelled(TypedCell cell, TypedSheet sheet) {
    Optional<Heading> left = beside(cell, sheet);
    return left.flatMap(heading -> NumberRoles.of(heading.roles()))
        .or(
            () ->
                left.map(
                    heading -> referred.contains(cell.address()) ? NumberRole.CONSTANT : null));
  }

  private Optional<Heading> beside(TypedCell cell, TypedSheet sheet) {
    return Optional.ofNullable(sheet.row(cell.address().row()).lowerEntry(cell.address().column()))
        .map(Map.Entry::getValue)
        .filter(TypedCell::isText)
        .flatMap(text -> surroundings.grammar().read(text.text()));
  }

  /** A number that formulas use is a reading; one that nothing speaks of is not read. */
  private Taken unnamed(TypedCell cell, TypedSheet sheet) {
    if (referred.contains(cell.address())) {
      return new Taken.Other(NumberRole.RAW);
    }
    return new Taken.NotRead(
        why(
            beside(cell, sheet)
                .map(Heading::text)
                .orElse(strange.getOrDefault(cell.address(), ""))));
  }
}
