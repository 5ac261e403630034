package tenthmark.checker.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.grade.GradeTableColumns;
import tenthmark.checker.roster.RosterColumns;
import tenthmark.checker.submission.Naming;
import tenthmark.checker.submission.PathPattern;

/** The keys of a profile that say how a course is run. */
final class AdministrationSection {

  private static final String SUBMISSIONS = "submissions";

  private AdministrationSection() {}

  static Administration read(Section profile, GradeTableColumns grades) {
    return new Administration(
        naming(profile),
        profile.section("roster").map(AdministrationSection::roster).orElse(RosterColumns.STANDARD),
        grades);
  }

  /** A preset by its word, or patterns, which have braces. */
  private static Naming naming(Section profile) {
    List<PathPattern> patterns = new ArrayList<>();
    for (String text : profile.texts(SUBMISSIONS)) {
      Naming preset = Naming.presets().get(text);
      if (preset != null) {
        patterns.addAll(preset.patterns());
      } else if (text.contains("{")) {
        pattern(text, profile).ifPresent(patterns::add);
      } else {
        profile.valueProblem(
            SUBMISSIONS,
            SUBMISSIONS
                + " must be one of "
                + String.join(", ", Naming.presets().keySet())
                + ", or a pattern such as {last}_{first}_{id}_{any}");
      }
    }
    return new Naming(patterns);
  }

  private static Optional<PathPattern> pattern(String text, Section profile) {
    try {
      return Optional.of(PathPattern.of(text));
    } catch (PathPattern.MalformedException wrong) {
      profile.valueProblem(SUBMISSIONS, "the pattern " + text + ": " + wrong.getMessage());
      return Optional.empty();
    }
  }

  private static RosterColumns roster(Section section) {
    RosterColumns columns =
        new RosterColumns(
            orStandard(section.texts("id"), RosterColumns.STANDARD.id()),
            orStandard(section.texts("name"), RosterColumns.STANDARD.name()),
            orStandard(section.texts("section"), RosterColumns.STANDARD.section()));
    section.close();
    return columns;
  }

  private static List<String> orStandard(List<String> headings, List<String> standard) {
    return headings.isEmpty() ? standard : headings;
  }
}
