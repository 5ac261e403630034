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
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tenthmark.checker.classroom.Distribution;
import tenthmark.checker.classroom.SharedData;
import tenthmark.checker.course.Course;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.LeftOut;
import tenthmark.checker.report.Provenance;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.roster.Register;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** The page that an instructor gets about all workbooks. */
public final class ClassPage {

  /** So many pairs with equal raw data are shown; a class that shares its files has thousands. */
  private static final int PAIRS = 1000;

  private final List<FileReport> reports;
  private final LeftOut leftOut;
  private final Course course;
  private final Register register;
  private final Wording wording;
  private final Function<Path, String> name;
  private final Function<Path, String> link;

  private ClassPage(
      List<FileReport> reports,
      LeftOut leftOut,
      Course course,
      Register register,
      Wording wording,
      Function<Path, String> name,
      Function<Path, String> link) {
    this.reports = reports;
    this.leftOut = leftOut;
    this.course = course;
    this.register = register;
    this.wording = wording;
    this.name = name;
    this.link = link;
  }

  /**
   * The page as one HTML file.
   *
   * @param reports on all workbooks, in their order
   * @param leftOut what lay among them and was not checked
   * @param register who handed them in
   * @param provenance by what and when they were checked
   * @param texts what the page says, in one language
   * @param name how a workbook is called
   * @param link from this page to the workbook's own
   */
  public static String of(
      List<FileReport> reports,
      LeftOut leftOut,
      Course course,
      Register register,
      Optional<Provenance> provenance,
      Sentences texts,
      Function<Path, String> name,
      Function<Path, String> link) {
    ClassPage page =
        new ClassPage(reports, leftOut, course, register, new Wording(texts), name, link);
    return Page.of(texts.say("class.title"), page.top(), page.main(), provenance, texts);
  }

  private DomContent top() {
    return header(
        h1(wording.say("class.title")),
        iff(!course.name().isEmpty(), p(course.name())),
        p(new TextReport(wording.texts()).summary(reports) + "."));
  }

  private DomContent main() {
    return div(
        nav(ul(
                li(a(wording.say("class.rules")).withHref("#rules")),
                li(a(wording.say("class.matrix")).withHref("#matrix")),
                li(a(wording.say("class.workbooks")).withHref("#workbooks")),
                li(a(wording.say("class.quantities")).withHref("#quantities")),
                li(a(wording.say("class.shared")).withHref("#shared"))))
            .attr("aria-label", wording.say("page.contents")),
        rules(),
        new RuleMatrix(reports, wording, this::toPage).content(),
        workbooks(),
        quantities(),
        shared());
  }

  private DomContent rules() {
    Map<String, List<Finding>> byRule =
        reports.stream()
            .flatMap(report -> report.toMend().stream())
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
            h2(wording.say("class.rules")),
            rows.isEmpty()
                ? p(wording.say("class.rules.none")).withClass("kind")
                : Tables.scrolling(
                    wording.say("class.rules.caption"),
                    wording.sayAll(
                        "heading.rule",
                        "heading.severity",
                        "report.findings",
                        "heading.workbooks",
                        "heading.looks-for"),
                    rows))
        .withId("rules");
  }

  private DomContent rule(List<Finding> findings) {
    Finding first = findings.get(0);
    long workbooks =
        reports.stream()
            .filter(
                report ->
                    report.toMend().stream()
                        .anyMatch(found -> found.rule().id().equals(first.rule().id())))
            .count();
    return tr(
        td(first.rule().id()).withClass("word"),
        td(wording.say(first.rule().severity().inWords())),
        Tables.count(findings.size()),
        Tables.count(workbooks),
        td(wording.say(first.rule().looksFor())).withClass("sentence"));
  }

  private DomContent workbooks() {
    return section(
            h2(wording.say("class.workbooks")),
            nothingRead(),
            leftOut("class.skipped", leftOut.skipped()),
            leftOut("class.strays", leftOut.strays()),
            Tables.scrolling(
                wording.say("class.workbooks.caption"),
                wording.sayAll(
                    "heading.workbook",
                    "heading.errors",
                    "heading.warnings",
                    "heading.notes",
                    "report.points",
                    "heading.records",
                    "heading.unread"),
                reports.stream().map(this::workbook).toList()))
        .withId("workbooks");
  }

  /** Workbooks of which nothing was read are named first: their findings say nothing. */
  private DomContent nothingRead() {
    List<FileReport> unread =
        reports.stream().filter(report -> report.contents().nothingWasRead()).toList();
    return iff(
        !unread.isEmpty(),
        p(
            text(wording.say(Message.counted("class.nothing-read", unread.size())) + " "),
            each(
                IntStream.range(0, unread.size()).boxed().toList(),
                index -> span(text(index == 0 ? "" : ", "), toPage(unread.get(index).file())))));
  }

  private DomContent leftOut(String line, List<Path> paths) {
    return iff(
        !paths.isEmpty(),
        p(
            wording.say(Message.counted(line, paths.size()))
                + " "
                + paths.stream().map(Path::toString).collect(Collectors.joining(", "))));
  }

  private DomContent workbook(FileReport report) {
    DomContent linked = td(toPage(report.file()));
    return report
        .problem()
        .<DomContent>map(
            problem -> tr(linked, td(wording.say("class.unchecked", problem)).attr("colspan", "6")))
        .orElseGet(
            () ->
                tr(
                    linked,
                    Tables.count(report.count(Severity.ERROR)),
                    Tables.count(report.count(Severity.WARNING)),
                    Tables.count(report.count(Severity.NOTE)),
                    td(wording.number(report.pointsLost())).withClass("number"),
                    Tables.count(report.contents().records().size()),
                    Tables.count(report.contents().coverage().numbersNotRead())));
  }

  private DomContent toPage(Path file) {
    return a(name.apply(file)).withHref(link.apply(file));
  }

  private DomContent quantities() {
    List<Distribution> distributions = Distribution.of(reports, course);
    return section(
            h2(wording.say("class.quantities")),
            p(
                course.quantities().isEmpty()
                    ? wording.say("class.quantities.common", Distribution.LEAST)
                    : wording.say("class.quantities.expected")),
            iff(distributions.isEmpty(), p(wording.say("class.quantities.none"))),
            each(
                IntStream.range(0, distributions.size()).boxed().toList(),
                index -> quantity("quantity-" + (index + 1), distributions.get(index))))
        .withId("quantities");
  }

  private DomContent quantity(String id, Distribution distribution) {
    String heading =
        distribution.unit().isEmpty()
            ? distribution.quantity()
            : wording.say("class.quantity", distribution.quantity(), distribution.unit());
    long outside = Chart.outside(distribution, wording);
    return section(
        h3(heading),
        p(
            Wording.accepted(distribution)
                .map(value -> wording.say("class.accepted.line", value))
                .orElseGet(() -> wording.say("class.accepted.none"))),
        Chart.of(id, distribution, wording),
        iff(outside > 0, p(wording.say(Message.counted("class.outside", outside)))),
        details(
            summary(wording.say(Message.counted("class.table", distribution.values().size()))),
            Tables.scrolling(
                heading,
                wording.sayAll("heading.workbook", "heading.number", "heading.size"),
                distribution.values().stream().map(this::value).toList())));
  }

  private DomContent value(Distribution.Value value) {
    return tr(
        td(toPage(value.file())),
        td(wording.number(value.value())).withClass("number"),
        Tables.number(value.uncertainty(), wording));
  }

  private DomContent shared() {
    List<SharedData> pairs =
        SharedData.of(reports).stream()
            .filter(pair -> !register.sameSender(pair.one(), pair.other()))
            .toList();
    return section(
            h2(wording.say("class.shared")),
            p(
                wording.say(
                    "class.shared.what", SharedData.LEAST, SharedData.DIGITS, SharedData.FEW)),
            p(wording.say("class.shared.observation")),
            pairs.isEmpty()
                ? p(wording.say("class.shared.none"))
                : Tables.scrolling(
                    wording.say("class.shared.caption"),
                    wording.sayAll(
                        "heading.workbook", "heading.workbook", "heading.numbers", "heading.which"),
                    pairs.stream().limit(PAIRS).map(this::pair).toList()),
            iff(
                pairs.size() > PAIRS,
                p(wording.say(Message.counted("class.shared.more", pairs.size() - PAIRS)))))
        .withId("shared");
  }

  private DomContent pair(SharedData pair) {
    return tr(
        td(toPage(pair.one())),
        td(toPage(pair.other())),
        Tables.count(pair.count()),
        td(which(pair)));
  }

  private String which(SharedData pair) {
    String shown = pair.numbers().stream().map(wording::number).collect(Collectors.joining(", "));
    int more = pair.count() - pair.numbers().size();
    return more == 0 ? shown : wording.say(Message.counted("class.numbers.more", more, shown));
  }
}
