package tenthmark.checker.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.header;
import static j2html.TagCreator.iff;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import tenthmark.checker.grade.Grade;
import tenthmark.checker.grade.GradeStatus;
import tenthmark.checker.remark.Remark;
import tenthmark.checker.report.Provenance;
import tenthmark.checker.roster.Attempt;
import tenthmark.checker.roster.Student;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** The page that an instructor gets about the students: who handed in what, and what it gives. */
public final class StudentsPage {

  private final List<Grade> grades;
  private final Wording wording;
  private final Function<Path, String> link;

  private StudentsPage(List<Grade> grades, Wording wording, Function<Path, String> link) {
    this.grades = grades;
    this.wording = wording;
    this.link = link;
  }

  /**
   * The page as one HTML file.
   *
   * @param course its name; may be empty
   * @param unmatched remarks on students whom nobody is
   * @param texts what the page says, in one language
   * @param link from this page to a workbook's own
   */
  public static String of(
      String course,
      List<Grade> grades,
      List<Remark> unmatched,
      Optional<Provenance> provenance,
      Sentences texts,
      Function<Path, String> link) {
    StudentsPage page = new StudentsPage(grades, new Wording(texts), link);
    return Page.of(
        texts.say("students.title"),
        header(
            h1(texts.say("students.title")), iff(!course.isEmpty(), p(course)), p(page.counts())),
        div(
            page.students(),
            page.missing(),
            page.stale(unmatched),
            new RemarksForm(grades, unmatched, page.wording).content()),
        provenance,
        texts,
        Optional.of(Page.resource("remarks.js")));
  }

  private String counts() {
    List<Message> counts =
        List.of(GradeStatus.values()).stream()
            .filter(status -> count(status) > 0)
            .map(status -> Message.of("text.file", status.inWords(), count(status)))
            .toList();
    return counts.isEmpty()
        ? wording.say("students.none")
        : wording.say(Message.joined("list.next", counts)) + ".";
  }

  private long count(GradeStatus status) {
    return grades.stream().filter(grade -> grade.status() == status).count();
  }

  private DomContent students() {
    return section(
            h2(wording.say("students.title")),
            Tables.scrolling(
                wording.say("students.caption"),
                wording.sayAll(
                    "heading.student",
                    "heading.section",
                    "heading.status",
                    "heading.attempts",
                    "heading.mended",
                    "heading.fresh",
                    "heading.remaining",
                    "report.points",
                    "heading.score"),
                grades.stream().map(this::row).toList()))
        .withId("students");
  }

  private DomContent row(Grade grade) {
    return tr(
        td(name(grade)),
        td(grade.participant().student().section()),
        td(text(wording.say(grade.status().inWords())), reason(grade), unlisted(grade)),
        Tables.count(grade.participant().attempts().size()),
        count(grade.comparison().map(compared -> compared.mended().size())),
        count(grade.comparison().map(compared -> compared.fresh().size())),
        count(grade.comparison().map(compared -> compared.remaining().size())),
        number(grade.pointsLost()),
        number(grade.score()));
  }

  private DomContent name(Grade grade) {
    Student student = grade.participant().student();
    return grade
        .report()
        .<DomContent>map(report -> a(student.shown()).withHref(link.apply(report.file())))
        .orElseGet(() -> text(student.shown()));
  }

  private static DomContent reason(Grade grade) {
    return text(grade.reason().isEmpty() ? "" : ": " + grade.reason());
  }

  private DomContent unlisted(Grade grade) {
    return text(grade.participant().listed() ? "" : "; " + wording.say("students.unlisted"));
  }

  private static DomContent count(Optional<Integer> count) {
    return td(count.map(Object::toString).orElse("")).withClass("number");
  }

  private DomContent number(Optional<BigDecimal> number) {
    return td(number.map(wording::number).orElse("")).withClass("number");
  }

  /** Those on the roster of whom no workbook is there, with what they sent instead. */
  private DomContent missing() {
    List<Grade> absent =
        grades.stream()
            .filter(grade -> grade.participant().listed())
            .filter(grade -> grade.participant().attempts().isEmpty())
            .toList();
    return section(
            h2(wording.say("students.missing")),
            absent.isEmpty()
                ? p(wording.say("students.missing.none"))
                : ul(each(absent, grade -> li(missing(grade)))))
        .withId("missing");
  }

  private String missing(Grade grade) {
    String student = grade.participant().student().shown();
    List<Attempt> strays = grade.participant().strays();
    return strays.isEmpty() ? student : wording.say("students.strays", student, grade.reason());
  }

  private DomContent stale(List<Remark> unmatched) {
    List<String> lines =
        Stream.concat(
                grades.stream()
                    .flatMap(grade -> grade.stale().stream())
                    .map(remark -> stale("students.stale.finding", remark)),
                unmatched.stream().map(remark -> stale("students.stale.student", remark)))
            .toList();
    return iff(
        !lines.isEmpty(),
        section(
                h2(wording.say("students.stale")),
                p(wording.say("students.stale.what")),
                ul(each(lines, line -> li(line))))
            .withId("stale"));
  }

  private String stale(String key, Remark remark) {
    return wording.say(
        key,
        remark.row(),
        remark.student(),
        remark.rule().orElse("") + remark.cell().map(cell -> " " + cell).orElse(""));
  }
}
