package tenthmark.checker.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.article;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.h4;
import static j2html.TagCreator.header;
import static j2html.TagCreator.iff;
import static j2html.TagCreator.li;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.td;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.reading.CoverageSummary;
import tenthmark.checker.report.Contents;
import tenthmark.checker.report.Excerpt;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.ReadingText;
import tenthmark.checker.report.RecordSummary;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** The page that a student gets about a workbook. It shows nothing from any other workbook. */
public final class StudentPage {

  private final FileReport report;
  private final Profile profile;
  private final RuleCatalogue rules;
  private final Feedback feedback;
  private final Wording wording;

  private StudentPage(
      FileReport report, Profile profile, RuleCatalogue rules, Feedback feedback, Wording wording) {
    this.report = report;
    this.profile = profile;
    this.rules = profile.grading().applied(rules);
    this.feedback = feedback;
    this.wording = wording;
  }

  /**
   * The page as one HTML file.
   *
   * @param profile by which the workbook was checked
   * @param rules all rules
   * @param feedback what it says beside what was found
   * @param texts what the page says, in one language
   */
  public static String of(
      FileReport report, Profile profile, RuleCatalogue rules, Feedback feedback, Sentences texts) {
    StudentPage page = new StudentPage(report, profile, rules, feedback, new Wording(texts));
    return Page.of(page.title(), page.top(), page.main(), feedback.provenance(), texts);
  }

  private String title() {
    return wording.say("page.title", report.name());
  }

  private DomContent top() {
    String course = profile.course().name();
    return header(h1(title()), iff(!course.isEmpty(), p(course)), p(wording.say(outcome())));
  }

  private Message outcome() {
    if (report.problem().isPresent()) {
      return Message.of("page.unchecked");
    }
    int records = report.contents().records().size();
    return Message.counted("page.summary", records, TextReport.counts(List.of(report)));
  }

  private DomContent main() {
    return report
        .problem()
        .map(this::unchecked)
        .orElseGet(() -> div(contentsList(), grade(), checked(), findings(), records()));
  }

  private DomContent grade() {
    return each(
        feedback.grade().stream().toList(), grade -> new GradeSection(grade, wording).of(report));
  }

  private DomContent unchecked(String problem) {
    return section(
        h2(wording.say("page.unchecked.why")),
        p(wording.say("page.unchecked.problem", problem)),
        p(wording.say("page.unchecked.again")));
  }

  private DomContent contentsList() {
    return nav(ul(
            iff(feedback.grade().isPresent(), li(a(wording.say("grade.title")).withHref("#grade"))),
            li(a(wording.say("page.checked")).withHref("#checked")),
            li(
                a(wording.say("report.findings")).withHref("#findings"),
                iff(
                    !bySheet().isEmpty(),
                    ul(each(bySheet().keySet(), sheet -> li(toSheet(sheet)))))),
            li(a(wording.say("page.records")).withHref("#records"))))
        .attr("aria-label", wording.say("page.contents"));
  }

  private DomContent toSheet(String sheet) {
    return a(wording.say("page.sheet", sheet)).withHref("#" + id(sheet));
  }

  private DomContent checked() {
    return section(
            h2(wording.say("page.checked")),
            ul(
                each(report.contents().sheets(), sheet -> li(size(sheet))),
                li(wording.say("page.recalculated")),
                each(report.contents().convention(), sentence -> li(wording.say(sentence)))),
            details(
                summary(wording.say(Message.counted("page.rules", rules.rules().size()))),
                ul(each(rules.rules(), rule -> rule(rule.declaration())))))
        .withId("checked");
  }

  private DomContent rule(RuleDeclaration rule) {
    return li(wording.say("page.rule", rule.id(), rule.looksFor()));
  }

  private String size(Contents.SheetSize sheet) {
    return wording.say(
        sheet.hidden() ? "page.sheet.hidden" : "page.sheet.size",
        sheet.name(),
        Message.counted("page.cells", sheet.cells()),
        Message.counted("page.formulas", sheet.formulas()));
  }

  private DomContent findings() {
    return section(
            h2(wording.say("report.findings")),
            report.findings().isEmpty() ? nothingFound() : p(wording.say("page.meaning")),
            each(
                bySheet().entrySet(),
                sheet ->
                    section(
                        h3(wording.say("page.sheet", sheet.getKey())).withId(id(sheet.getKey())),
                        each(sheet.getValue(), this::finding))),
            each(report.excerpt().rest(), rest -> p(wording.say(rest))))
        .withId("findings");
  }

  private DomContent nothingFound() {
    boolean none = report.contents().records().isEmpty();
    return p(wording.say(none ? "page.no-findings" : "report.well-done")).withClass("kind");
  }

  private DomContent finding(Finding finding) {
    Severity severity = finding.rule().severity();
    List<Finding> following = report.following(finding).stream().limit(Excerpt.MOST).toList();
    return article(
            h4(
                wording.say(
                    "page.finding",
                    finding.cell().place(),
                    severity.inWords(),
                    finding.rule().id())),
            dl(
                dt(wording.say("heading.found")),
                dd(wording.say(finding.told())),
                dt(wording.say("heading.expected")),
                dd(wording.say(finding.expected())),
                dt(wording.say("heading.why")),
                dd(wording.say(finding.rule().why())),
                dt(wording.say("heading.fix")),
                dd(wording.say(finding.rule().fix())),
                iff(finding.points() > 0, dt(wording.say("report.points"))),
                iff(finding.points() > 0, dd(wording.number(finding.points()))),
                iff(!following.isEmpty(), dt(wording.say("heading.following"))),
                iff(!following.isEmpty(), dd(ul(each(following, this::following))))))
        .withClasses("finding", severity.id());
  }

  private DomContent following(Finding finding) {
    return li(wording.say("page.following", finding.cell(), finding.rule().id(), finding.told()));
  }

  private DomContent records() {
    List<RecordSummary> records = report.contents().records();
    return section(
            h2(wording.say("page.records")),
            p(wording.say("page.understood")),
            records.isEmpty()
                ? p(wording.say("page.no-records"))
                : Tables.scrolling(
                    wording.say("page.records.caption"),
                    wording.sayAll(
                        "heading.sheet",
                        "heading.place",
                        "heading.quantity",
                        "heading.symbol",
                        "heading.number",
                        "heading.size",
                        "heading.unit",
                        "heading.contributions"),
                    records.stream().map(this::row).toList()),
            unread())
        .withId("records");
  }

  private DomContent unread() {
    CoverageSummary coverage = report.contents().coverage();
    return div(
        p(wording.say("page.numbers", ReadingText.numbers(coverage))),
        iff(
            !coverage.unread().isEmpty(),
            Tables.scrolling(
                wording.say("page.unread.caption"),
                wording.sayAll("heading.sheet", "heading.cells", "heading.reason"),
                coverage.unread().stream().map(this::row).toList())));
  }

  private DomContent row(CoverageSummary.Unread unread) {
    return tr(
        td(unread.first().sheet()),
        td(wording.say(unread.places())),
        td(wording.say(unread.why())));
  }

  private DomContent row(RecordSummary entry) {
    return tr(
        td(entry.place().sheet()),
        td(entry.place().place()),
        td(entry.quantity()),
        td(entry.symbol()),
        Tables.number(entry.value(), wording),
        Tables.number(entry.uncertainty(), wording),
        td(entry.unit()),
        td(contributions(entry)));
  }

  private String contributions(RecordSummary entry) {
    List<Message> parts =
        entry.contributions().entrySet().stream()
            .map(
                part ->
                    Message.of(
                        "contribution", part.getKey().inWords(), Wording.figure(part.getValue())))
            .toList();
    return parts.isEmpty() ? "" : wording.say(Message.joined("list.next", parts));
  }

  private Map<String, List<Finding>> bySheet() {
    return report.excerpt().findings().stream()
        .filter(finding -> !finding.follows())
        .collect(
            Collectors.groupingBy(
                finding -> finding.cell().sheet(), LinkedHashMap::new, Collectors.toList()));
  }

  private String id(String sheet) {
    return "sheet-" + (List.copyOf(bySheet().keySet()).indexOf(sheet) + 1);
  }
}
