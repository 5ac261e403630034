package tenthmark.checker.page;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.iff;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.wording.Message;

/**
 * The class at a glance: a row for each workbook with findings, a column for each rule that found
 * something, the most frequent first. Workbooks with the same findings stand together, so that what
 * many have in common shows as a block.
 */
final class RuleMatrix {

  private final List<FileReport> reports;
  private final int clean;
  private final List<String> rules;
  private final Wording wording;
  private final Function<Path, DomContent> linked;

  RuleMatrix(List<FileReport> all, Wording wording, Function<Path, DomContent> linked) {
    this.wording = wording;
    this.linked = linked;
    List<FileReport> checked = all.stream().filter(report -> report.problem().isEmpty()).toList();
    this.rules = rules(checked);
    this.reports =
        checked.stream()
            .filter(report -> !report.toMend().isEmpty())
            .sorted(Comparator.comparing(this::pattern).reversed())
            .toList();
    this.clean = checked.size() - reports.size();
  }

  private static List<String> rules(List<FileReport> reports) {
    Map<String, Long> workbooks =
        reports.stream()
            .flatMap(
                report -> report.toMend().stream().map(finding -> finding.rule().id()).distinct())
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    return workbooks.entrySet().stream()
        .sorted(
            Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Which of the rules found something, as digits in their order. */
  private String pattern(FileReport report) {
    return rules.stream()
        .map(rule -> found(report, rule).isEmpty() ? "0" : "1")
        .collect(Collectors.joining());
  }

  private static List<Finding> found(FileReport report, String rule) {
    return report.toMend().stream().filter(finding -> finding.rule().id().equals(rule)).toList();
  }

  /** The section of the page. */
  DomContent content() {
    String title = wording.say("class.matrix.caption");
    return section(
            h2(wording.say("class.matrix")),
            p(wording.say(Message.counted("class.matrix.clean", clean))),
            iff(
                !reports.isEmpty(),
                div(table(
                            caption(title),
                            thead(
                                tr(
                                    th(wording.say("heading.workbook")).attr("scope", "col"),
                                    each(
                                        rules,
                                        rule ->
                                            th(span(rule))
                                                .attr("scope", "col")
                                                .withClass("turned")))),
                            tbody(each(reports, this::row)))
                        .withClass("matrix"))
                    .withClass("scroll")
                    .attr("role", "region")
                    .attr("aria-label", title)
                    .attr("tabindex", "0")))
        .withId("matrix");
  }

  private DomContent row(FileReport report) {
    return tr(
        th(linked.apply(report.file())).attr("scope", "row"),
        each(rules, rule -> cell(found(report, rule))));
  }

  /** How often, in the colour of the worst; an empty cell for never. */
  private DomContent cell(List<Finding> findings) {
    Optional<Severity> worst =
        findings.stream().map(finding -> finding.rule().severity()).min(Comparator.naturalOrder());
    return worst
        .<DomContent>map(
            severity ->
                td(
                        span(Integer.toString(findings.size())),
                        span(" " + wording.say(severity.inWords())).withClass("heard"))
                    .withClass("hit " + severity.name().toLowerCase(Locale.ROOT)))
        .orElseGet(() -> td());
  }
}
