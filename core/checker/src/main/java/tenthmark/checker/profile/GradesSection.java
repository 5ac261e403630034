package tenthmark.checker.profile;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.grade.GradeColumn;
import tenthmark.checker.grade.GradeTableColumns;
import tenthmark.checker.rules.PointLimits;
import tenthmark.measurement.rounding.Decimals;

/** How a course makes a score of points lost, and what its table of grades looks like. */
record GradesSection(GradeTableColumns table, PointLimits limits) {

  /** Of a course that does not say. */
  static final GradesSection STANDARD =
      new GradesSection(GradeTableColumns.STANDARD, PointLimits.NONE);

  private static final String PARTS = "parts";

  static GradesSection read(Section section, Set<String> ruleIds) {
    Optional<Double> maximum = section.number("maximum", Range.POSITIVE);
    PointLimits limits =
        new PointLimits(
            section.number("most-per-rule", Range.NOT_NEGATIVE),
            section.number("most-per-record", Range.NOT_NEGATIVE),
            section.list(PARTS, part -> part(part, ruleIds)));
    Map<String, GradeColumn> columns =
        section.section("columns").map(GradesSection::columns).orElse(Map.of());
    section.close();
    maximum
        .filter(full -> sum(limits.parts()) > full)
        .ifPresent(
            full ->
                section.valueProblem(
                    PARTS, "the shares of all parts are more than the maximum together"));
    return new GradesSection(
        columns.isEmpty()
            ? GradeTableColumns.standard(maximum)
            : new GradeTableColumns(maximum, columns),
        limits);
  }

  private static double sum(List<PointLimits.WorkPart> parts) {
    return parts.stream()
        .map(part -> Decimals.shortest(part.share()))
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .doubleValue();
  }

  private static Optional<PointLimits.WorkPart> part(Section section, Set<String> ruleIds) {
    Optional<String> name = section.requiredText("part");
    Optional<Double> share = section.requiredNumber("share", Range.POSITIVE);
    List<String> rules = section.texts("rules");
    rules.stream()
        .filter(id -> !ruleIds.contains(id))
        .forEach(id -> section.valueProblem("rules", RulesSection.unknown(id)));
    List<String> sheets = section.texts("sheets");
    section.close();
    if (rules.isEmpty() && sheets.isEmpty()) {
      section.problem("a part needs rules or sheets");
    }
    return name.flatMap(
        called ->
            share.map(
                most ->
                    new PointLimits.WorkPart(called, most, Set.copyOf(rules), Set.copyOf(sheets))));
  }

  private static Map<String, GradeColumn> columns(Section section) {
    Map<String, GradeColumn> columns = new LinkedHashMap<>();
    Map<String, GradeColumn> words = Words.of(GradeColumn.values());
    for (String heading : section.keys()) {
      section.choice(heading, words).ifPresent(column -> columns.put(heading, column));
    }
    return columns;
  }
}
