package tenthmark.checker.page;

import static j2html.TagCreator.button;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.iff;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.grade.Deduction;
import tenthmark.checker.grade.Grade;
import tenthmark.checker.remark.Remark;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.roster.Student;
import tenthmark.checker.rules.Finding;

/**
 * The part of the instructor's page in which findings are waived or changed. A button writes the
 * file of remarks for download: the page itself sends nothing anywhere.
 */
final class RemarksForm {

  private final List<Grade> grades;
  private final List<Remark> unmatched;
  private final Wording wording;

  RemarksForm(List<Grade> grades, List<Remark> unmatched, Wording wording) {
    this.grades = grades;
    this.unmatched = unmatched;
    this.wording = wording;
  }

  DomContent content() {
    List<Remark> left =
        Stream.concat(grades.stream().flatMap(grade -> grade.stale().stream()), unmatched.stream())
            .toList();
    return section(
            h2(wording.say("remarks.title")),
            p(wording.say("remarks.what")),
            each(
                grades.stream().filter(grade -> grade.report().isPresent()).toList(),
                this::student),
            iff(
                !left.isEmpty(),
                details(
                    summary(wording.say("students.stale")),
                    each(
                        left,
                        remark ->
                            box(
                                remark.student(),
                                remark.rule().orElse(""),
                                remark.cell().orElse(""),
                                remark.student(),
                                Optional.of(remark))))),
            p(button(wording.say("remarks.write")).withType("button").withId("remarks-write")),
            p().withId("remarks-said")
                .attr("role", "status")
                .attr("data-written", wording.say("remarks.written", "{0}"))
                .attr("data-incomplete", wording.say("remarks.incomplete")))
        .withId("remarks");
  }

  private DomContent student(Grade grade) {
    Student student = grade.participant().student();
    String key = student.id().isEmpty() ? student.name() : student.id();
    List<DomContent> boxes = new ArrayList<>();
    for (Finding finding : grade.report().map(FileReport::findings).orElse(List.of())) {
      boxes.add(
          box(
              key,
              finding.rule().id(),
              finding.cell().toString(),
              wording.say(finding.said()),
              remark(grade, finding)));
    }
    grade.deductions().stream()
        .filter(deduction -> deduction.finding().isEmpty())
        .forEach(deduction -> boxes.add(own(key, deduction.remark())));
    boxes.add(own(key, Optional.empty()));
    return details(
        summary(
            wording.say(
                "remarks.student",
                student.shown(),
                wording.number(grade.pointsLost().orElse(BigDecimal.ZERO)))),
        each(boxes, one -> one));
  }

  private static Optional<Remark> remark(Grade grade, Finding finding) {
    return grade.deductions().stream()
        .filter(deduction -> deduction.finding().filter(finding::equals).isPresent())
        .findFirst()
        .flatMap(Deduction::remark);
  }

  private DomContent own(String student, Optional<Remark> remark) {
    return box(student, "", "", wording.say("remarks.own"), remark);
  }

  private DomContent box(
      String student, String rule, String cell, String found, Optional<Remark> remark) {
    return div(
            p(text((rule + " " + cell).strip() + (rule.isEmpty() ? "" : ": ") + found)),
            label(
                text(wording.say("remarks.points") + " "),
                input()
                    .withName("points")
                    .attr("inputmode", "decimal")
                    .attr("size", "5")
                    .withValue(remark.map(one -> one.points().toPlainString()).orElse(""))),
            label(
                text(" " + wording.say("remarks.because") + " "),
                input().withName("because").withValue(remark.map(Remark::because).orElse(""))),
            iff(
                !rule.isEmpty(),
                button(wording.say("remarks.waive")).withType("button").withClass("waive")))
        .withClass("remark")
        .attr("data-student", student)
        .attr("data-rule", rule)
        .attr("data-cell", cell);
  }
}
