package tenthmark.checker.rules;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;

/**
 * What would not be found without each finding: it is put right, the workbook read and recalculated
 * with that, and what is then no longer found follows from it.
 */
final class Causes {

  /** How many cells are recalculated for one workbook, so that no hostile one takes for ever. */
  private static final long MOST_CELLS = 1_000_000;

  private final RuleCatalogue rules;
  private final Inspection inspection;

  Causes(RuleCatalogue rules, Inspection inspection) {
    this.rules = rules;
    this.inspection = inspection;
  }

  /** The findings, each with what follows from it. */
  List<Finding> withEffects(List<Finding> findings) {
    Map<Finding, Effects> effects = effects(findings);
    return findings.stream()
        .map(finding -> finding.withEffects(effects.getOrDefault(finding, Effects.NONE)))
        .toList();
  }

  private Map<Finding, Effects> effects(List<Finding> findings) {
    Map<Finding, Effects> effects = new HashMap<>();
    if (findings.size() < 2) {
      return effects;
    }
    Set<CellAddress> cells = findings.stream().map(Finding::cell).collect(Collectors.toSet());
    RuleCatalogue concerned = concerned(findings);
    long size =
        inspection.workbook().sheets().stream().flatMap(Sheet::cells).limit(MOST_CELLS).count();
    long left = MOST_CELLS;
    for (Finding finding : findings) {
      if (!finding.mends().isEmpty() && left >= size) {
        left -= size;
        List<Cause> vanishing = vanishing(finding, findings, concerned);
        if (!vanishing.isEmpty()) {
          effects.put(finding, new Effects(vanishing, behind(finding.cell(), cells)));
        }
      }
    }
    return effects;
  }

  private RuleCatalogue concerned(List<Finding> findings) {
    Set<String> ids = findings.stream().map(f -> f.rule().id()).collect(Collectors.toSet());
    return new RuleCatalogue(
        rules.rules().stream().filter(rule -> ids.contains(rule.declaration().id())).toList());
  }

  private List<Cause> vanishing(Finding mended, List<Finding> all, RuleCatalogue concerned) {
    Map<CellAddress, Optional<Content>> contents =
        mended.mends().stream()
            .collect(
                Collectors.toMap(
                    Mend::cell, mend -> Optional.of(mend.content()), (one, other) -> one));
    Set<Cause> still =
        concerned.found(inspection.with(contents)).stream()
            .map(Cause::of)
            .collect(Collectors.toSet());
    if (isStill(mended, still)) {
      return List.of();
    }
    return all.stream()
        .filter(other -> !other.equals(mended) && !isStill(other, still))
        .map(Cause::of)
        .distinct()
        .toList();
  }

  private static boolean isStill(Finding finding, Set<Cause> still) {
    return finding.apart().map(Cause::of).anyMatch(still::contains);
  }

  private List<CellAddress> behind(CellAddress cell, Set<CellAddress> cells) {
    return inspection.evaluation().dependsOn(cell, cells)
        ? cells.stream()
            .filter(one -> inspection.evaluation().dependsOn(cell, Set.of(one)))
            .sorted(
                Comparator.comparing(CellAddress::sheet)
                    .thenComparing(CellAddress::row)
                    .thenComparing(CellAddress::column))
            .toList()
        : List.of();
  }
}
