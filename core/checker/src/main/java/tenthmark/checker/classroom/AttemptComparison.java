package tenthmark.checker.classroom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Finding;

/**
 * A workbook beside an earlier attempt of the same student. A finding is still there if the same
 * rule finds something in the same cell, or says the same of another cell, as after a row was put
 * in.
 *
 * @param mended found in the earlier attempt only
 * @param fresh found in the later attempt only
 * @param remaining found in both, as the later one has them
 */
public record AttemptComparison(
    List<Finding> mended, List<Finding> fresh, List<Finding> remaining) {

  /** Copies the lists. */
  public AttemptComparison {
    mended = List.copyOf(mended);
    fresh = List.copyOf(fresh);
    remaining = List.copyOf(remaining);
  }

  /** Compares two reports. */
  public static AttemptComparison of(FileReport earlier, FileReport later) {
    List<Finding> before = new ArrayList<>(earlier.findings());
    List<Finding> after = new ArrayList<>(later.findings());
    List<Finding> remaining = new ArrayList<>();
    pair(before, after, remaining, finding -> finding.rule().id() + "\n" + finding.cell());
    pair(before, after, remaining, finding -> finding.rule().id() + "\n" + finding.found());
    return new AttemptComparison(before, after, remaining);
  }

  /** Moves what has the same key in both lists. */
  private static void pair(
      List<Finding> before,
      List<Finding> after,
      List<Finding> both,
      Function<Finding, String> key) {
    Map<String, List<Finding>> byKey = new HashMap<>();
    before.forEach(
        finding ->
            byKey.computeIfAbsent(key.apply(finding), none -> new ArrayList<>()).add(finding));
    for (Finding finding : List.copyOf(after)) {
      List<Finding> same = byKey.getOrDefault(key.apply(finding), List.of());
      if (!same.isEmpty()) {
        before.remove(same.remove(0));
        after.remove(finding);
        both.add(finding);
      }
    }
  }
}
