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
import tenthmark.checker.report.Contents;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.RecordSummary;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Rule;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.measurement.wording.Sentences;

/** The page that a student gets about a workbook. It shows nothing from any other workbook. */
public final class StudentPage {

  private static final Sentences TEXTS = CheckerTexts.english();

  private final FileReport report;
  private final Profile profile;
  private final RuleCatalogue rules;

  private StudentPage(FileReport report, Profile profile, RuleCatalogue rules) {
    this.report = report;
    this.profile = profile;
    this.rules = profile.grading().applied(rules);
  }

  /**
   * The page as one HTML file.
   *
   * @param profile by which the workbook was checked
   * @param rules all rules
   */
  public static String of(FileReport report, Profile profile, RuleCatalogue rules) {
    StudentPage page = new StudentPage(report, profile, rules);
    return Page.of("Feedback on " + report.name(), page.top(), page.main());
  }

  private DomContent top() {
    String course = profile.course().name();
    return header(
        h1("Feedback on " + report.name()), iff(!course.isEmpty(), p(course)), p(summaryLine()));
  }

  private String summaryLine() {
    if (report.problem().isPresent()) {
      return "This workbook could not be checked.";
    }
    return Wording.severities(report)
        + " in "
        + Wording.counted(report.contents().records().size(), "measurement record")
        + ".";
  }

  private DomContent main() {
    return report
        .problem()
        .map(StudentPage::unchecked)
        .orElseGet(() -> div(contentsList(), checked(), findings(), records()));
  }

  private static DomContent unchecked(String problem) {
    return section(
        h2("Why it could not be checked"),
        p("The checker says: " + problem + "."),
        p("Open the file in your spreadsheet program, save it again and hand it in once more."));
  }

  private DomContent contentsList() {
    return nav(ul(
            li(a("What was checked").withHref("#checked")),
            li(
                a("Findings").withHref("#findings"),
                iff(
                    !bySheet().isEmpty(),
                    ul(each(bySheet().keySet(), sheet -> li(toSheet(sheet)))))),
            li(a("Measurement records").withHref("#records"))))
        .attr("aria-label", "Contents");
  }

  private DomContent toSheet(String sheet) {
    return a("Sheet " + sheet).withHref("#" + id(sheet));
  }

  private DomContent checked() {
    return section(
            h2("What was checked"),
            ul(
                each(report.contents().sheets(), sheet -> li(size(sheet))),
                li(
                    "All formulas were recalculated. What could not be recalculated is said below,"
                        + " and it is no fault of yours."),
                li(Wording.convention(profile.course().convention()))),
            details(
                summary(Wording.counted(rules.rules().size(), "rule") + " were applied"),
                ul(each(rules.rules(), StudentPage::rule))))
        .withId("checked");
  }

  private static DomContent rule(Rule rule) {
    return li(rule.declaration().id() + ": " + TEXTS.say(rule.declaration().looksFor()));
  }

  private static String size(Contents.SheetSize sheet) {
    return "Sheet "
        + sheet.name()
        + (sheet.hidden() ? " (hidden): " : ": ")
        + Wording.counted(sheet.cells(), "cell")
        + ", of which "
        + Wording.counted(sheet.formulas(), "formula")
        + ".";
  }

  private DomContent findings() {
    return section(
            h2("Findings"),
            report.findings().isEmpty() ? nothingFound() : p(meaning()),
            each(
                bySheet().entrySet(),
                sheet ->
                    section(
                        h3("Sheet " + sheet.getKey()).withId(id(sheet.getKey())),
                        each(sheet.getValue(), StudentPage::finding))))
        .withId("findings");
  }

  private DomContent nothingFound() {
    String line =
        report.contents().records().isEmpty()
            ? "Nothing was found to mend, but no measurement record was recognised either. A record"
                + " is recognised by its headings, such as quantity, value, unit and uncertainty."
            : "Well done: none of the rules found anything to mend.";
    return p(line).withClass("kind");
  }

  private static String meaning() {
    return "An error is wrong or missing, a warning is probably wrong, and a note is worth knowing"
        + " but no fault.";
  }

  private static DomContent finding(Finding finding) {
    String severity = TextReport.word(finding.rule().severity());
    return article(
            h4(finding.cell().place() + ": " + severity + " " + finding.rule().id()),
            dl(
                dt("Found"),
                dd(TEXTS.say(finding.found())),
                dt("Expected"),
                dd(TEXTS.say(finding.expected())),
                dt("Why it matters"),
                dd(TEXTS.say(finding.rule().why())),
                dt("How to fix it"),
                dd(TEXTS.say(finding.rule().fix())),
                iff(finding.points() > 0, dt("Points lost")),
                iff(finding.points() > 0, dd(Wording.number(finding.points())))))
        .withClasses("finding", severity);
  }

  private DomContent records() {
    List<RecordSummary> records = report.contents().records();
    return section(
            h2("Measurement records"),
            p(
                "This is how the checker understood your tables. If a record is missing or"
                    + " misread, look at the headings of its table."),
            records.isEmpty()
                ? p("No measurement record was recognised.")
                : Tables.scrolling(
                    "Recognised measurement records",
                    List.of(
                        "Sheet",
                        "Value in",
                        "Quantity",
                        "Symbol",
                        "Value",
                        "Uncertainty",
                        "Unit",
                        "Contributions"),
                    records.stream().map(StudentPage::row).toList()))
        .withId("records");
  }

  private static DomContent row(RecordSummary entry) {
    return tr(
        td(entry.place().sheet()),
        td(entry.place().place()),
        td(entry.quantity()),
        td(entry.symbol()),
        Tables.number(entry.value()),
        Tables.number(entry.uncertainty()),
        td(entry.unit()),
        td(
            entry.contributions().entrySet().stream()
                .map(
                    part ->
                        TEXTS.say(part.getKey().inWords()) + " " + Wording.number(part.getValue()))
                .collect(Collectors.joining(", "))));
  }

  private Map<String, List<Finding>> bySheet() {
    return report.findings().stream()
        .collect(
            Collectors.groupingBy(
                finding -> finding.cell().sheet(), LinkedHashMap::new, Collectors.toList()));
  }

  private String id(String sheet) {
    return "sheet-" + (List.copyOf(bySheet().keySet()).indexOf(sheet) + 1);
  }
}
