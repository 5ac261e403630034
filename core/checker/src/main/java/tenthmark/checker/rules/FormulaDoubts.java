package tenthmark.checker.rules;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.carried.Derivation;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.Taken;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * Whether the formula of an uncertainty takes numbers that were not taken for uncertainties: then
 * the student means the table otherwise than it was read.
 */
final class FormulaDoubts {

  /** Numbers that a formula may take whatever else they are. */
  private static final Set<NumberRole> PLAIN =
      EnumSet.of(
          NumberRole.CONSTANT,
          NumberRole.COUNT,
          NumberRole.ACCEPTED,
          NumberRole.INDEX,
          NumberRole.LABEL);

  /** More cells than this are no formula that a student reads through. */
  private static final int MOST_CELLS = 500;

  private final Inspection inspection;

  FormulaDoubts(Inspection inspection) {
    this.inspection = inspection;
  }

  /** The first such number of the formula in a cell that states a record's uncertainty. */
  Optional<Message> about(
      MeasurementRecord measurement, CellAddress place, Optional<Derivation.Followed> derivation) {
    if (measurement.place(Field.UNCERTAINTY).filter(place::equals).isEmpty()) {
      return Optional.empty();
    }
    return precedents(place).stream()
        .filter(this::isNumber)
        .filter(
            derivation.isPresent()
                ? cell -> isNoUncertainty(cell, measurement, derivation.get())
                : cell -> isNoContribution(cell, measurement))
        .findFirst()
        .map(cell -> Message.of("doubt.formula", cell.address().place()));
  }

  /** Whether a carried uncertainty takes a number that is neither one nor what the value takes. */
  private boolean isNoUncertainty(
      Cell cell, MeasurementRecord measurement, Derivation.Followed derivation) {
    boolean ofValue =
        precedents(measurement.placeOrValue(Field.VALUE)).stream()
            .anyMatch(other -> other.address().equals(cell.address()));
    return !ofValue && (isElse(cell) && !isPlain(cell.address()) || isForeign(cell, derivation));
  }

  /**
   * Whether a total takes a number from elsewhere, or one beside the record that is not small
   * beside its value.
   */
  private boolean isNoContribution(Cell cell, MeasurementRecord measurement) {
    if (!measurement.isBesideParts(cell.address())) {
      return isElse(cell) || isValueOfAnother(cell, measurement);
    }
    double value = measurement.number(Field.VALUE).map(Math::abs).orElse(0.0);
    return inspection
        .evaluation()
        .number(cell.address())
        .filter(size -> value > 0 && Math.abs(size) >= value / 2)
        .isPresent();
  }

  private boolean isValueOfAnother(Cell cell, MeasurementRecord measurement) {
    return part(cell.address()).filter(field -> field == Field.VALUE).isPresent()
        && !measurement.placeOrValue(Field.VALUE).equals(cell.address());
  }

  private List<Cell> precedents(CellAddress place) {
    return inspection
        .workbook()
        .at(place)
        .map(inspection.evaluation()::precedents)
        .orElse(List.of());
  }

  private boolean isNumber(Cell cell) {
    return inspection.evaluation().number(cell.address()).isPresent();
  }

  /** Whether a number is no part of a record, nor a step from values and uncertainties. */
  private boolean isElse(Cell cell) {
    if (part(cell.address()).isPresent()) {
      return false;
    }
    if (!(cell.content() instanceof Content.Formula)) {
      return true;
    }
    Set<Field> fields = EnumSet.noneOf(Field.class);
    collect(cell, fields, new HashSet<>());
    return !fields.contains(Field.VALUE) || Field.CONTRIBUTIONS.stream().anyMatch(fields::contains);
  }

  /** The parts of records that a step is computed from. */
  private void collect(Cell cell, Set<Field> fields, Set<CellAddress> seen) {
    for (Cell before : inspection.evaluation().precedents(cell)) {
      if (seen.size() < MOST_CELLS && seen.add(before.address())) {
        Optional<Field> field = part(before.address());
        if (field.isPresent()) {
          fields.add(field.get());
        } else {
          collect(before, fields, seen);
        }
      }
    }
  }

  private Optional<Field> part(CellAddress cell) {
    return inspection
        .reading()
        .coverage()
        .at(cell)
        .filter(Taken.Part.class::isInstance)
        .map(taken -> ((Taken.Part) taken).field());
  }

  private boolean isPlain(CellAddress cell) {
    return inspection
        .reading()
        .coverage()
        .at(cell)
        .filter(taken -> taken instanceof Taken.Other other && PLAIN.contains(other.role()))
        .isPresent();
  }

  /**
   * Whether it is the uncertainty of a record that the value does not come from, while the value
   * comes from a number that no record holds: the one may be that of the other.
   */
  private boolean isForeign(Cell cell, Derivation.Followed derivation) {
    return !derivation.exact().isEmpty()
        && inspection
            .reading()
            .coverage()
            .at(cell.address())
            .filter(
                taken ->
                    taken instanceof Taken.Part part
                        && part.field() == Field.UNCERTAINTY
                        && !isInput(part.record(), derivation))
            .isPresent();
  }

  private static boolean isInput(MeasurementRecord measurement, Derivation.Followed derivation) {
    CellAddress value = measurement.placeOrValue(Field.VALUE);
    return derivation.carried().stream()
        .flatMap(carried -> carried.inputs().stream())
        .anyMatch(input -> input.cell().equals(value));
  }
}
