package tenthmark.checker.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.carried.Derivation;
import tenthmark.checker.carried.Derivations;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.course.Course;
import tenthmark.checker.dimension.FormulaUnits;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.CoverageSummary;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.Reading;
import tenthmark.checker.reading.Taken;
import tenthmark.checker.record.Display;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.recording.Convention;

/**
 * A workbook as the rules see it.
 *
 * @param workbook what the file holds
 * @param evaluation its values, recalculated
 * @param reading its measurement records, and what every number was taken for
 * @param coverage how many numbers were taken for what
 * @param derivations how the uncertainties of calculated values follow from the records
 * @param course what the course expects
 * @param expectations that, set against the records
 * @param units what units formulas give, kept for all questions about single records
 */
public record Inspection(
    Workbook workbook,
    Evaluation evaluation,
    Reading reading,
    CoverageSummary coverage,
    List<Derivation> derivations,
    Course course,
    Expectations expectations,
    FormulaUnits units) {

  /** Recalculates a workbook and finds its records. */
  public static Inspection of(Workbook workbook, Catalogue catalogue, Course course) {
    return of(workbook, Evaluation.of(workbook, catalogue), course);
  }

  /** Finds the records of a recalculated workbook. */
  public static Inspection of(Workbook workbook, Evaluation evaluation, Course course) {
    Reading reading = Reading.of(workbook, evaluation, course);
    return new Inspection(
        workbook,
        evaluation,
        reading,
        CoverageSummary.of(reading.coverage(), evaluation),
        Derivations.of(workbook, evaluation, reading.records()),
        course,
        Expectations.of(course, reading.records()),
        units(workbook, evaluation, reading));
  }

  /** The same workbook read anew with other content in certain cells. */
  Inspection with(Map<CellAddress, Optional<Content>> contents) {
    Workbook changed = workbook.with(contents);
    return of(changed, evaluation.of(changed), course);
  }

  /**
   * The convention by which measurements are to be written down: the course's, or where no course
   * is told the workbook's own.
   */
  public Convention convention() {
    return course.equals(Course.PLAIN) ? ofWorkbook() : course.convention();
  }

  /** What the workbook says; {@code bench} where its functions say that this cannot be read. */
  Convention ofWorkbook() {
    try {
      return evaluation.convention();
    } catch (ArgumentException unreadable) {
      return Convention.BENCH;
    }
  }

  /** What the course makes of uncertainties before they are stated. */
  Expansion expansion() {
    return new Expansion(convention().coverageFactor());
  }

  /** The units that the formulas of the workbook give, followed anew: faults are told once. */
  FormulaUnits formulaUnits() {
    return units(workbook, evaluation, reading);
  }

  private static FormulaUnits units(Workbook workbook, Evaluation evaluation, Reading reading) {
    return new FormulaUnits(workbook, evaluation, reading.records(), counts(reading));
  }

  private static Set<CellAddress> counts(Reading reading) {
    return reading.coverage().cells().entrySet().stream()
        .filter(
            taken ->
                taken.getValue() instanceof Taken.Other other && other.role() == NumberRole.COUNT)
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  /** All records. */
  public List<MeasurementRecord> records() {
    return reading.records();
  }

  /** All records, by the tables in which they stand. */
  public List<RecordTable> tables() {
    return reading.tables();
  }

  /** The stated uncertainties whose values were followed back to records. */
  Stream<CarriedComparison> carried() {
    return derivations.stream()
        .filter(Derivation.Followed.class::isInstance)
        .map(followed -> new CarriedComparison((Derivation.Followed) followed, expansion()));
  }

  /** The cells of all records' values. */
  Set<CellAddress> recordValues() {
    return reading.values();
  }

  /** The cells of all parts of records. */
  public Set<CellAddress> recordPlaces() {
    return records().stream().flatMap(MeasurementRecord::places).collect(Collectors.toSet());
  }

  /**
   * The apparatus in the course's list by which a record was measured: the one that its quantity
   * names, else the one that the record mentions; none for a calculated value.
   */
  Optional<Apparatus> apparatus(MeasurementRecord measurement) {
    return course.apparatus().isEmpty()
        ? Optional.empty()
        : expectations
            .apparatus(measurement)
            .flatMap(course::apparatus)
            .or(() -> course.apparatusMentioned(measurement.wording()))
            .filter(apparatus -> !measurement.isCalculatedFrom(recordValues()));
  }

  /**
   * Whether the record, or the course's list of apparatus, has a digital display; a stopwatch shows
   * digits as well.
   */
  boolean isOffDisplay(MeasurementRecord measurement) {
    return Display.isRead(measurement)
        || apparatus(measurement)
            .filter(apparatus -> apparatus.kind() != ApparatusKind.SCALE)
            .isPresent();
  }

  /** The sheets that are checked; hidden ones are left alone, though others may refer to them. */
  public Stream<Sheet> sheets() {
    return workbook.sheets().stream().filter(sheet -> !sheet.hidden());
  }

  /** All cells with a formula. */
  Stream<Cell> formulas() {
    return sheets().flatMap(Sheet::cells).filter(cell -> cell.content() instanceof Content.Formula);
  }
}
