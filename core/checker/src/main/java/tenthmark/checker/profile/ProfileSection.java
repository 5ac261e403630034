package tenthmark.checker.profile;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.Course;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.reading.TableGuide;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.rules.Grading;
import tenthmark.measurement.wording.Language;

/** A whole profile. */
record ProfileSection(Set<String> ruleIds) {

  private static final Map<String, Language> LANGUAGES = languages();

  private static Map<String, Language> languages() {
    Map<String, Language> languages = new LinkedHashMap<>();
    Arrays.stream(Language.values()).forEach(language -> languages.put(language.code(), language));
    return languages;
  }

  Profile read(Section section) {
    String name = section.text("course").orElse("");
    Language language = section.choice("language", LANGUAGES).orElse(Language.ENGLISH);
    ConventionSection.Choice choice = ConventionSection.read("convention", section);
    ApparatusSection benches = new ApparatusSection();
    List<Apparatus> apparatus = section.list("apparatus", benches::read);
    List<ExpectedQuantity> quantities =
        section.list("quantities", new QuantitySection(benches.names())::read);
    Grading grading =
        section
            .section("rules")
            .map(rules -> RulesSection.read(rules, ruleIds))
            .orElse(Grading.DECLARED);
    Vocabulary headings =
        section.section("headings").map(HeadingsSection::read).orElse(Vocabulary.STANDARD);
    List<TableGuide> tables = section.list("tables", TablesSection::read);
    GradesSection grades =
        section
            .section("grades")
            .map(entry -> GradesSection.read(entry, ruleIds))
            .orElse(GradesSection.STANDARD);
    Administration administration = AdministrationSection.read(section, grades.table());
    if (section.value(ProfileNodes.INCLUDE).isPresent()) {
      section.keyProblem(ProfileNodes.INCLUDE, "only a profile in a file can include others");
    }
    section.close();
    return new Profile(
        new Course(
            name,
            choice.convention(),
            choice.combineRequired(),
            apparatus,
            quantities,
            headings,
            tables),
        grading.within(grades.limits()),
        language,
        administration);
  }
}
