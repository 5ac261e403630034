package tenthmark.checker.carried;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellModel;
import tenthmark.measurement.formula.Follower;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Formulas;

/** Follows calculated values back to recorded measurements and carries their uncertainties. */
public final class Derivations {

  /** The scatter of several values of one quantity says more than what each one states. */
  private static final Set<String> MEANS = Set.of("AVERAGE", "AVERAGEA", "MEDIAN", "TRIMMEAN");

  private static final Comparator<CellAddress> PLACE =
      Comparator.comparing(CellAddress::sheet)
          .thenComparing(CellAddress::row)
          .thenComparing(CellAddress::column);

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final Follower follower = new Follower(new Formulas());
  private final Map<CellAddress, MeasurementRecord> records = new HashMap<>();
  private final Set<CellAddress> recorded = new HashSet<>();
  private final Set<CellAddress> calculated = new HashSet<>();

  private Derivations(Workbook workbook, Evaluation evaluation, List<MeasurementRecord> records) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    for (MeasurementRecord record : records) {
      this.records.put(record.place(Field.VALUE).orElseThrow(), record);
      record.places().forEach(recorded::add);
    }
    this.records.keySet().stream()
        .filter(cell -> this.records.get(cell).isCalculatedFrom(this.records.keySet()))
        .filter(cell -> !isOfSeries(cell))
        .forEach(calculated::add);
  }

  /** The derivations of all uncertainties stated for values calculated from records. */
  public static List<Derivation> of(
      Workbook workbook, Evaluation evaluation, List<MeasurementRecord> records) {
    List<MeasurementRecord> valued =
        records.stream().filter(record -> record.place(Field.VALUE).isPresent()).toList();
    Derivations derivations = new Derivations(workbook, evaluation, valued);
    return Claims.in(workbook, evaluation, valued).stream()
        .flatMap(claim -> derivations.derivation(claim).stream())
        .toList();
  }

  /** A mean or a line says more by its scatter than the uncertainties of its points do. */
  private boolean isOfSeries(CellAddress value) {
    return evaluation.behind(value, recorded).stream()
        .flatMap(cell -> NativeFunctions.of(cell).stream())
        .anyMatch(
            function ->
                NativeFunctions.LINES.contains(function)
                    || NativeFunctions.MEANS.contains(function));
  }

  private Optional<Derivation> derivation(Claim claim) {
    Set<CellAddress> others = recordsBehind(claim.value());
    if (others.isEmpty() || isFoundOtherwise(claim) || isMean(claim, others)) {
      return Optional.empty();
    }
    try {
      return followed(claim, others);
    } catch (FormulaException problem) {
      return Optional.of(new Derivation.NotFollowed(claim, problem.said()));
    }
  }

  /** The values of records that a value is calculated from, the few that matter of many. */
  private Set<CellAddress> recordsBehind(CellAddress value) {
    Set<CellAddress> behind = new HashSet<>();
    for (Cell cell : evaluation.behind(value, Set.of())) {
      if (records.containsKey(cell.address()) && !cell.address().equals(value)) {
        behind.add(cell.address());
      }
    }
    return behind;
  }

  private Optional<Derivation> followed(Claim claim, Set<CellAddress> others) {
    List<CarriedUncertainty> carried = new ArrayList<>();
    Set<Set<CellAddress>> tried = new HashSet<>();
    for (Set<CellAddress> ends : ends(others)) {
      Optional<CarriedUncertainty> found = carried(claim, ends);
      found
          .filter(sizes -> tried.add(cells(sizes)))
          .filter(sizes -> !sizes.isZero())
          .ifPresent(carried::add);
    }
    if (carried.isEmpty()) {
      return Optional.empty();
    }
    Set<CellAddress> exact = typed(claim.value(), others);
    Set<CellAddress> besides = new LinkedHashSet<>(typed(claim.place(), recorded));
    besides.removeAll(exact);
    exact.stream().flatMap(cell -> numbersBeside(cell).stream()).forEach(besides::add);
    besides.removeAll(exact);
    besides.remove(claim.place());
    return Optional.of(
        new Derivation.Followed(claim, carried, List.copyOf(exact), List.copyOf(besides)));
  }

  private static Set<CellAddress> cells(CarriedUncertainty carried) {
    Set<CellAddress> cells = new HashSet<>();
    carried.inputs().forEach(input -> cells.add(input.cell()));
    return cells;
  }

  private Set<Set<CellAddress>> ends(Set<CellAddress> others) {
    Set<Set<CellAddress>> ends = new LinkedHashSet<>();
    ends.add(nearest(others));
    ends.add(measured(others));
    return ends;
  }

  /** The records that state an uncertainty; a calculated one without is followed through. */
  private Set<CellAddress> nearest(Set<CellAddress> others) {
    Set<CellAddress> ends = new HashSet<>(others);
    ends.removeIf(
        cell -> records.get(cell).absoluteUncertainty().isEmpty() && calculated.contains(cell));
    return ends;
  }

  /** The records whose values come from no other record. */
  private Set<CellAddress> measured(Set<CellAddress> others) {
    Set<CellAddress> ends = new HashSet<>(others);
    ends.removeAll(calculated);
    return ends;
  }

  /** Empty if an input has no uncertainty or value that could be carried. */
  private Optional<CarriedUncertainty> carried(Claim claim, Set<CellAddress> ends) {
    List<CellAddress> cells = List.copyOf(ends);
    CellModel all = follower.model(evaluation.cells(), claim.value(), cells);
    List<CellAddress> reached = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      if (all.reaches(i)) {
        reached.add(cells.get(i));
      }
    }
    reached.sort(PLACE);
    List<RecordedInput> inputs = new ArrayList<>();
    for (CellAddress cell : reached) {
      MeasurementRecord record = records.get(cell);
      Optional<Double> value = record.number(Field.VALUE);
      Optional<Double> uncertainty = record.absoluteUncertainty();
      if (value.isEmpty() || uncertainty.isEmpty()) {
        return Optional.empty();
      }
      inputs.add(new RecordedInput(record.name(), cell, value.get(), uncertainty.get()));
    }
    return inputs.isEmpty()
        ? Optional.empty()
        : Optional.of(
            CarriedUncertainty.through(
                follower.model(evaluation.cells(), claim.value(), reached), inputs));
  }

  /** The typed-in numbers that a cell is computed from without passing certain cells. */
  private Set<CellAddress> typed(CellAddress from, Set<CellAddress> ends) {
    Set<CellAddress> typed = new LinkedHashSet<>();
    evaluation.behind(from, ends).stream()
        .filter(cell -> cell.content() instanceof Content.Number)
        .map(Cell::address)
        .filter(cell -> !cell.equals(from))
        .forEach(typed::add);
    return typed;
  }

  private List<CellAddress> numbersBeside(CellAddress cell) {
    return workbook.sheet(cell.sheet()).stream()
        .flatMap(sheet -> sheet.row(cell.row()).stream())
        .filter(other -> other.content() instanceof Content.Number)
        .map(Cell::address)
        .filter(other -> !other.equals(cell))
        .toList();
  }

  private boolean isFoundOtherwise(Claim claim) {
    return evaluation.behind(claim.place(), recorded).stream()
        .anyMatch(
            cell ->
                calls(cell).anyMatch(NativeFunctions.OTHER_METHODS::contains)
                    || evaluation.calls(cell).stream()
                        .anyMatch(
                            call ->
                                call.is(FunctionRole.CARRIED)
                                    && call.argument("correlations").isPresent()));
  }

  private boolean isMean(Claim claim, Set<CellAddress> others) {
    return evaluation.behind(claim.value(), others).stream()
        .flatMap(Derivations::calls)
        .anyMatch(MEANS::contains);
  }

  private static Stream<String> calls(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        ? formula.functions().stream()
        : Stream.empty();
  }
}
