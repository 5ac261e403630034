package tenthmark.checker.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
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
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tenthmark.checker.classroom.Distribution;
import tenthmark.checker.classroom.SharedData;
import tenthmark.checker.course.Course;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.wording.CheckerTexts;

/** The page that an instructor gets about all workbooks. */
public final class ClassPage {

  private final List<FileReport> reports;
  private final Course course;
  private final Function<Path, String> name;
  private final Function<Path, String> link;

  private ClassPage(
      List<FileReport> reports,
      Course course,
      Function<Path, String> name,
      Function<Path, String> link) {
    this.reports = reports;
    this.course = course;
    this.name = name;
    this.link = link;
  }

  /**
   * The page as one HTML file.
   *
   * @param reports on all workbooks, in their order
   * @param name how a workbook is called
   * @param link from this page to the workbook's own
   */
  public static String of(
      List<FileReport> reports,
      Course course,
      Function<Path, String> name,
      Function<Path, String> link) {
    ClassPage page = new ClassPage(reports, course, name, link);
    return Page.of("Class report", page.top(), page.main());
  }

  private DomContent top() {
    return header(
        h1("Class report"),
        iff(!course.name().isEmpty(), p(course.name())),
        p(TextReport.summary(reports) + "."));
  }

  private DomContent main() {
    return div(
        nav(ul(
                li(a("Findings by rule").withHref("#rules")),
                li(a("Workbooks").withHref("#workbooks")),
                li(a("Values of the class").withHref("#quantities")),
                li(a("Equal raw data").withHref("#shared"))))
            .attr("aria-label", "Contents"),
        rules(),
        workbooks(),
        quantities(),
        shared());
  }

  private DomContent rules() {
    Map<String, List<Finding>> byRule =
        reports.stream()
            .flatMap(report -> report.findings().stream())
            .collect(
                Collectors.groupingBy(
                    finding -> finding.rule().id(), LinkedHashMap::new, Collectors.toList()));
    List<DomContent> rows =
        byRule.entrySet().stream()
            .sorted(
                Map.Entry.<String, List<Finding>>comparingByValue(
                        (one, other) -> Integer.compare(other.size(), one.size()))
                    .thenComparing(Map.Entry.comparingByKey()))
            .map(entry -> rule(entry.getValue()))
            .toList();
    return section(
            h2("Findings by rule"),
            rows.isEmpty()
                ? p("None of the rules found anything.").withClass("kind")
                : Tables.scrolling(
                    "Rules, the most frequent first",
                    List.of("Rule", "Severity", "Findings", "Workbooks", "Looks for"),
                    rows))
        .withId("rules");
  }

  private DomContent rule(List<Finding> findings) {
    Finding first = findings.get(0);
    long workbooks =
        reports.stream()
            .filter(
                report ->
                    report.findings().stream()
                        .anyMatch(found -> found.rule().id().equals(first.rule().id())))
            .count();
    return tr(
        td(first.rule().id()).withClass("word"),
        td(TextReport.word(first.rule().severity())),
        Tables.count(findings.size()),
        Tables.count(workbooks),
        td(CheckerTexts.english().say(first.rule().looksFor())));
  }

  private DomContent workbooks() {
    return section(
            h2("Workbooks"),
            Tables.scrolling(
                "Workbooks in the order of their names",
                List.of("Workbook", "Errors", "Warnings", "Notes", "Points lost", "Records"),
                reports.stream().map(this::workbook).toList()))
        .withId("workbooks");
  }

  private DomContent workbook(FileReport report) {
    DomContent linked = td(toPage(report.file()));
    return report
        .problem()
        .<DomContent>map(
            problem -> tr(linked, td("could not be checked: " + problem).attr("colspan", "5")))
        .orElseGet(
            () ->
                tr(
                    linked,
                    Tables.count(report.count(Severity.ERROR)),
                    Tables.count(report.count(Severity.WARNING)),
                    Tables.count(report.count(Severity.NOTE)),
                    td(Wording.number(report.pointsLost())).withClass("number"),
                    Tables.count(report.contents().records().size())));
  }

  private DomContent toPage(Path file) {
    return a(name.apply(file)).withHref(link.apply(file));
  }

  private DomContent quantities() {
    List<Distribution> distributions = Distribution.of(reports, course);
    return section(
            h2("Values of the class"),
            p(
                course.quantities().isEmpty()
                    ? "No profile names the expected quantities: shown is what at least "
                        + Distribution.LEAST
                        + " workbooks record under the same name and unit."
                    : "Shown are the quantities that the profile expects, in its units."),
            iff(distributions.isEmpty(), p("There is none.")),
            each(
                IntStream.range(0, distributions.size()).boxed().toList(),
                index -> quantity("quantity-" + (index + 1), distributions.get(index))))
        .withId("quantities");
  }

  private DomContent quantity(String id, Distribution distribution) {
    String heading =
        distribution.quantity()
            + (distribution.unit().isEmpty() ? "" : " in " + distribution.unit());
    long outside = Chart.outside(distribution);
    return section(
        h3(heading),
        p(
            Wording.accepted(distribution)
                .map(text -> "The dashed line is the " + text + "; its uncertainty is shaded.")
                .orElse("The profile gives no accepted value.")),
        Chart.of(id, distribution),
        iff(
            outside > 0,
            p(
                Wording.counted(outside, "value")
                    + " far from the others, drawn as a triangle at the edge: see the table.")),
        details(
            summary("Table of " + Wording.counted(distribution.values().size(), "value")),
            Tables.scrolling(
                heading,
                List.of("Workbook", "Value", "Uncertainty"),
                distribution.values().stream().map(this::value).toList())));
  }

  private DomContent value(Distribution.Value value) {
    return tr(
        td(toPage(value.file())),
        td(Wording.number(value.value())).withClass("number"),
        Tables.number(value.uncertainty()));
  }

  private DomContent shared() {
    List<SharedData> pairs = SharedData.of(reports);
    return section(
            h2("Equal raw data"),
            p(
                "Pairs of workbooks in which at least "
                    + SharedData.LEAST
                    + " different typed-in numbers of at least "
                    + SharedData.DIGITS
                    + " digits are equal and in the same order, and make up at least half of such"
                    + " numbers in one of the two. Numbers that more than a quarter of the class"
                    + " (and more than "
                    + SharedData.FEW
                    + " workbooks) hold are taken to be given and are left out."),
            p(
                "This is an observation, not an accusation: partners at one bench share their"
                    + " readings, and a task may give them."),
            pairs.isEmpty()
                ? p("There is no such pair.")
                : Tables.scrolling(
                    "Pairs with equal raw data",
                    List.of("Workbook", "Workbook", "Equal numbers", "Which"),
                    pairs.stream().map(this::pair).toList()))
        .withId("shared");
  }

  private DomContent pair(SharedData pair) {
    return tr(
        td(toPage(pair.one())),
        td(toPage(pair.other())),
        Tables.count(pair.numbers().size()),
        td(pair.numbers().stream().map(Wording::number).collect(Collectors.joining(", "))));
  }
}
