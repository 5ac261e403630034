package tenthmark.checker.profile;

import java.util.List;
import java.util.Set;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.Course;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.record.HeadingWords;
import tenthmark.checker.rules.Grading;
import tenthmark.measurement.recording.Convention;

/** A whole profile. */
record ProfileSection(Set<String> ruleIds) {

  Profile read(Section section) {
    String name = section.text("course").orElse("");
    Convention convention = ConventionSection.read("convention", section);
    ApparatusSection benches = new ApparatusSection();
    List<Apparatus> apparatus = section.list("apparatus", benches::read);
    List<ExpectedQuantity> quantities =
        section.list("quantities", new QuantitySection(benches.names())::read);
    Grading grading =
        section
            .section("rules")
            .map(rules -> RulesSection.read(rules, ruleIds))
            .orElse(Grading.DECLARED);
    HeadingWords headings =
        section.section("headings").map(HeadingsSection::read).orElse(HeadingWords.STANDARD);
    section.close();
    return new Profile(new Course(name, convention, apparatus, quantities, headings), grading);
  }
}
