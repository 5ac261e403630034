package tenthmark.checker.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.measurement.rounding.Decimals;

/**
 * How many points a workbook may lose at most.
 *
 * @param perRule by all findings of one rule
 * @param perRecord by all findings in one measurement record
 * @param parts of the work, each with its share
 */
public record PointLimits(
    Optional<Double> perRule, Optional<Double> perRecord, List<WorkPart> parts) {

  /** No limits. */
  public static final PointLimits NONE =
      new PointLimits(Optional.empty(), Optional.empty(), List.of());

  /**
   * A part of the work that gives so many of the points, so that no more can be lost in it.
   *
   * @param name what the course calls it
   * @param share greater than 0
   * @param rules the ids of rules whose findings belong to it
   * @param sheets on which findings belong to it, whatever their rule
   */
  public record WorkPart(String name, double share, Set<String> rules, Set<String> sheets) {

    /** Copies the sets. */
    public WorkPart {
      rules = Set.copyOf(rules);
      sheets = Set.copyOf(sheets);
    }

    private boolean has(Finding finding) {
      return rules.contains(finding.rule().id())
          || sheets.stream().anyMatch(finding.cell().sheet()::equalsIgnoreCase);
    }
  }

  /** What limits a finding: the findings of one rule, record or part lose no more together. */
  private record Limit(Object group, double most) {}

  /** Copies the list. */
  public PointLimits {
    parts = List.copyOf(parts);
  }

  /** The findings in their order, each with what it costs within the limits. */
  List<Finding> applied(List<Finding> findings) {
    if (equals(NONE)) {
      return findings;
    }
    Map<Limit, BigDecimal> left = new HashMap<>();
    List<Finding> limited = new ArrayList<>();
    for (Finding finding : findings) {
      List<Limit> limits = limits(finding);
      BigDecimal cost = Decimals.shortest(finding.points());
      for (Limit limit : limits) {
        cost = cost.min(left.computeIfAbsent(limit, own -> Decimals.shortest(own.most())));
      }
      for (Limit limit : limits) {
        left.put(limit, left.get(limit).subtract(cost));
      }
      limited.add(finding.graded(finding.rule().severity(), cost.doubleValue()));
    }
    return limited;
  }

  private List<Limit> limits(Finding finding) {
    List<Limit> limits = new ArrayList<>();
    perRule.ifPresent(most -> limits.add(new Limit(finding.rule().id(), most)));
    perRecord.ifPresent(
        most -> finding.record().ifPresent(value -> limits.add(new Limit(value, most))));
    parts.stream()
        .filter(part -> part.has(finding))
        .forEach(part -> limits.add(new Limit(part, part.share())));
    return limits;
  }
}
