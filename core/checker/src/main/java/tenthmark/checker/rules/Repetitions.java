package tenthmark.checker.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;

/**
 * Which findings are one fault that stands in many cells: what one rule finds along a column, or
 * along a row where records stand side by side, in copies of one formula, or where the same is
 * expected of each of the cells.
 */
final class Repetitions {

  /** What findings of one fault have in common; a finding without a form is like no other. */
  private record Fault(String rule, Severity severity, double points, String line, Object form) {}

  private final Inspection inspection;
  private final Set<String> absences;
  private final Map<CellAddress, Boolean> across = new HashMap<>();

  /**
   * Finds faults that stand in many cells.
   *
   * @param absences the ids of rules that miss something, whatever the cell holds that they name
   */
  Repetitions(Inspection inspection, Set<String> absences) {
    this.inspection = inspection;
    this.absences = absences;
    for (RecordTable table : inspection.tables()) {
      for (MeasurementRecord measurement : table.records()) {
        measurement.places().forEach(place -> across.putIfAbsent(place, table.across()));
      }
    }
  }

  /** The faults in the order in which they were found first. */
  List<Finding> joined(List<Finding> findings) {
    Map<Fault, List<Finding>> faults = new LinkedHashMap<>();
    for (Finding finding : findings) {
      faults.computeIfAbsent(fault(finding), none -> new ArrayList<>()).add(finding);
    }
    List<Finding> joined = new ArrayList<>();
    for (List<Finding> same : faults.values()) {
      boolean apart = same.stream().map(Finding::cell).distinct().count() == same.size();
      joined.addAll(apart ? List.of(Finding.joined(same)) : same);
    }
    return joined;
  }

  private Fault fault(Finding finding) {
    CellAddress cell = finding.cell();
    int line = across.getOrDefault(cell, false) ? cell.row() : -1 - cell.column();
    return new Fault(
        finding.rule().id(),
        finding.rule().severity(),
        finding.points(),
        cell.sheet() + "\n" + line,
        form(finding));
  }

  /** What the cells of one fault share: their formula, or what is expected in place of a text. */
  private Object form(Finding finding) {
    Optional<Cell> cell = inspection.workbook().at(finding.cell());
    if (absences.contains(finding.rule().id())
        || cell.filter(found -> found.content() instanceof Content.Formula).isEmpty()) {
      return finding.expected();
    }
    return inspection
        .evaluation()
        .relativeForm(cell.get())
        .<Object>map(form -> form)
        .orElse(finding.cell());
  }
}
