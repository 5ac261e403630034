package tenthmark.checker.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tenthmark.measurement.formula.CellAddress;

/**
 * Which of the findings that a course reports would not be there without another one of them. Only
 * findings that are reported are causes.
 */
final class Consequences {

  private Consequences() {}

  /** The findings in their order, each that follows from another behind it. */
  static List<Finding> resolve(List<Finding> findings) {
    Map<Finding, Finding> origins = origins(findings, transitive(direct(findings)));
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
  private static Map<Finding, Set<Finding>> direct(List<Finding> findings) {
    Map<Cause, List<Finding>> byKey = new HashMap<>();
    findings.forEach(
        finding ->
            byKey.computeIfAbsent(Cause.of(finding), none -> new ArrayList<>()).add(finding));
    Map<Finding, Set<Finding>> following = new HashMap<>();
    for (Finding finding : findings) {
      Set<Finding> gone = new LinkedHashSet<>();
      finding.effects().vanishing().forEach(key -> gone.addAll(byKey.getOrDefault(key, List.of())));
      gone.remove(finding);
      following.put(finding, gone);
    }
    return following;
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
  private static Map<Finding, Finding> origins(
      List<Finding> findings, Map<Finding, Set<Finding>> following) {
    List<Finding> causes =
        findings.stream()
            .filter(finding -> !following.getOrDefault(finding, Set.of()).isEmpty())
            .sorted(
                Comparator.comparing((Finding finding) -> -following.get(finding).size())
                    .thenComparing(finding -> isCalculatedFrom(finding, following.get(finding))))
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

  private static boolean isCalculatedFrom(Finding finding, Collection<Finding> others) {
    Set<CellAddress> behind = new HashSet<>(finding.effects().behind());
    return others.stream().map(Finding::cell).anyMatch(behind::contains);
  }
}
