package tenthmark.checker.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;

/**
 * Which findings would not be there without another one: each is put right in turn, the workbook
 * read and recalculated with that, and what is then no longer found follows from it. Only findings
 * that are reported are causes.
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

  /** The findings in their order, each that follows from another behind it. */
  List<Finding> resolve(List<Finding> findings) {
    Map<Finding, Set<Finding>> following = transitive(following(findings));
    Map<Finding, Finding> origins = origins(findings, following);
    List<Finding> resolved = new ArrayList<>();
    for (Finding finding : findings) {
      if (!origins.containsKey(finding)) {
        List<Finding> followers =
            findings.stream().filter(other -> finding.equals(origins.get(other))).toList();
        resolved.add(finding.causing(followers));
        followers.forEach(other -> resolved.add(other.following(finding)));
      }
    }
    return resolved;
  }

  /** By finding, those that mending it makes vanish. */
  private Map<Finding, Set<Finding>> following(List<Finding> findings) {
    Map<Finding, Set<Finding>> following = new HashMap<>();
    if (findings.size() < 2) {
      return following;
    }
    RuleCatalogue concerned = concerned(findings);
    long cells =
        inspection.workbook().sheets().stream().flatMap(Sheet::cells).limit(MOST_CELLS).count();
    long left = MOST_CELLS;
    for (Finding finding : findings) {
      if (!finding.mends().isEmpty() && left >= cells) {
        left -= cells;
        following.put(finding, vanishing(finding, findings, concerned));
      }
    }
    return following;
  }

  private RuleCatalogue concerned(List<Finding> findings) {
    Set<String> ids = findings.stream().map(f -> f.rule().id()).collect(Collectors.toSet());
    return new RuleCatalogue(
        rules.rules().stream().filter(rule -> ids.contains(rule.declaration().id())).toList());
  }

  private Set<Finding> vanishing(Finding mended, List<Finding> all, RuleCatalogue concerned) {
    Map<CellAddress, Optional<Content>> contents =
        mended.mends().stream()
            .collect(
                Collectors.toMap(
                    Mend::cell, mend -> Optional.of(mend.content()), (one, other) -> one));
    Set<Cause> still =
        concerned.found(inspection.with(contents)).stream()
            .map(Causes::key)
            .collect(Collectors.toSet());
    Set<Finding> gone = new LinkedHashSet<>();
    if (!still.contains(key(mended))) {
      all.stream()
          .filter(other -> !other.equals(mended) && !still.contains(key(other)))
          .forEach(gone::add);
    }
    return gone;
  }

  private static Cause key(Finding finding) {
    return new Cause(finding.rule().id(), finding.cell());
  }

  /** What follows from what follows from a finding follows from it too. */
  private static Map<Finding, Set<Finding>> transitive(Map<Finding, Set<Finding>> direct) {
    Map<Finding, Set<Finding>> all = new HashMap<>();
    for (Finding finding : direct.keySet()) {
      Set<Finding> reached = new LinkedHashSet<>();
      List<Finding> open = new ArrayList<>(direct.get(finding));
      while (!open.isEmpty()) {
        Finding next = open.remove(open.size() - 1);
        if (!next.equals(finding) && reached.add(next)) {
          open.addAll(direct.getOrDefault(next, Set.of()));
        }
      }
      all.put(finding, reached);
    }
    return all;
  }

  /**
   * The cause of each finding that has one. Of findings that follow from one another the cause is
   * what more follows from, then what others are calculated from, then the first.
   */
  private Map<Finding, Finding> origins(
      List<Finding> findings, Map<Finding, Set<Finding>> following) {
    List<Finding> causes =
        findings.stream()
            .filter(finding -> !following.getOrDefault(finding, Set.of()).isEmpty())
            .sorted(
                Comparator.comparing((Finding finding) -> -following.get(finding).size())
                    .thenComparing(finding -> calculatedFrom(finding, following.get(finding))))
            .toList();
    Map<Finding, Finding> origins = new HashMap<>();
    Set<Finding> chosen = new LinkedHashSet<>();
    for (Finding cause : causes) {
      if (!origins.containsKey(cause)) {
        chosen.add(cause);
        following.get(cause).stream()
            .filter(finding -> !chosen.contains(finding))
            .forEach(finding -> origins.putIfAbsent(finding, cause));
      }
    }
    return origins;
  }

  private long calculatedFrom(Finding finding, Collection<Finding> others) {
    Set<CellAddress> cells = others.stream().map(Finding::cell).collect(Collectors.toSet());
    return inspection.evaluation().dependsOn(finding.cell(), cells) ? 1 : 0;
  }
}
