package tenthmark.checker.page;

import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.iff;
import static j2html.TagCreator.iffElse;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.td;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.math.BigDecimal;
import java.util.Optional;
import tenthmark.checker.classroom.AttemptComparison;
import tenthmark.checker.grade.Deduction;
import tenthmark.checker.grade.Grade;
import tenthmark.checker.remark.Remark;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Finding;
import tenthmark.measurement.wording.Message;

/** What a student's page says of the score, of the instructor's remarks and of earlier attempts. */
record GradeSection(Grade grade, Wording wording) {

  /** The section on the page of a workbook of the student. */
  DomContent of(FileReport report) {
    boolean counts =
        grade.report().filter(newest -> newest.file().equals(report.file())).isPresent();
    return section(
            h2(wording.say("grade.title")),
            iffElse(
                counts,
                div(counted(), score(), deductions(), comparison()),
                p(
                    wording.say(
                        grade.participant().severalAtOnce()
                            ? "grade.several"
                            : "grade.superseded"))))
        .withId("grade");
  }

  private DomContent counted() {
    int attempts = grade.participant().attempts().size();
    return iff(attempts > 1, p(wording.say("grade.newest", attempts)));
  }

  private DomContent score() {
    Optional<BigDecimal> lost = grade.pointsLost();
    return iff(
        lost.isPresent(),
        p(
            grade
                .score()
                .map(
                    score ->
                        wording.say(
                            "grade.score",
                            Wording.figure(score),
                            Wording.figure(grade.maximum().orElseThrow()),
                            Wording.figure(lost.orElseThrow())))
                .orElseGet(
                    () ->
                        wording.say("grade.lost", Wording.figure(lost.orElse(BigDecimal.ZERO))))));
  }

  private DomContent deductions() {
    return iff(
        !grade.deductions().isEmpty(),
        Tables.scrolling(
            wording.say("grade.deductions"),
            wording.sayAll("heading.finding", "report.points", "heading.remark"),
            grade.deductions().stream().map(this::row).toList()));
  }

  private DomContent row(Deduction deduction) {
    return tr(
        td(
            deduction
                .finding()
                .map(GradeSection::finding)
                .orElseGet(() -> wording.say("grade.own"))),
        td(wording.number(deduction.points())).withClass("number"),
        td(deduction.remark().map(Remark::because).orElse("")).withClass("sentence"));
  }

  private static String finding(Finding finding) {
    return finding.cell() + " " + finding.rule().id();
  }

  private DomContent comparison() {
    return grade
        .comparison()
        .<DomContent>map(
            compared ->
                section(
                    p(changed(compared)),
                    ul(
                        each(
                            compared.mended(),
                            finding -> li(wording.say("grade.mended", finding(finding)))),
                        each(
                            compared.fresh(),
                            finding -> li(wording.say("grade.fresh", finding(finding)))))))
        .orElseGet(() -> iff(false, p()));
  }

  private String changed(AttemptComparison compared) {
    return wording.say(
        Message.of(
            "grade.changed",
            compared.mended().size(),
            compared.fresh().size(),
            compared.remaining().size()));
  }
}
