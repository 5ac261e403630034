package tenthmark.checker.rules;

import java.util.List;
import java.util.Set;
import tenthmark.checker.course.Course;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.profile.ProfileText;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.wording.Sentences;

/** What the rules find in a workbook, as tests compare it. */
final class Findings {

  private static final Sentences ENGLISH = CheckerTexts.english();

  private static final Catalogue FUNCTIONS = Catalogue.load();

  /** Those that tell how much was read: {@link CoverageTest} looks at them alone. */
  static final Set<String> COVERAGE = Set.of("nothing-read", "not-read");

  private static final RuleCatalogue ALL = RuleCatalogue.load();
  private static final RuleCatalogue RULES =
      new RuleCatalogue(
          ALL.rules().stream()
              .filter(rule -> !COVERAGE.contains(rule.declaration().id()))
              .toList());

  /** The headings of the sample table; contributions stand in H to L, their total in M. */
  static final Object[] HEADINGS = {
    "Quantity",
    "Symbol",
    "Value",
    "Unit",
    "Division",
    "Spacing",
    "Ends",
    "Reading",
    "Physical",
    "Instrument",
    "Timing",
    "Repeat",
    "Uncertainty",
    "Result"
  };

  static final String REASON = "Marks are fine, both ends judged by eye, edges sharp.";

  private Findings() {}

  /** A sheet with the headings of the sample table in row 1. */
  static Grid table() {
    return Grid.sheet("Records").row(HEADINGS);
  }

  /** What is to be put right; not what goes with it. */
  static List<Finding> in(Workbook workbook) {
    return toMend(all(workbook, Grading.DECLARED));
  }

  /** What the rules find, and what follows from what. */
  static List<Finding> all(Workbook workbook, Grading grading) {
    return RULES.check(Inspection.of(workbook, FUNCTIONS, Course.PLAIN), grading);
  }

  private static List<Finding> toMend(List<Finding> findings) {
    return findings.stream().filter(finding -> !finding.follows()).toList();
  }

  /** What the rules find for a course with this profile. */
  static List<Finding> in(Grid grid, String profile) {
    return in(grid.workbook(), profile);
  }

  /** What the rules find for a course with this profile. */
  static List<Finding> in(Workbook workbook, String profile) {
    ProfileText text = new ProfileReader(ALL.ids()).read(profile);
    if (!(text instanceof ProfileText.Usable usable)) {
      throw new AssertionError(text);
    }
    Course course = usable.profile().course();
    return toMend(
        RULES.check(Inspection.of(workbook, FUNCTIONS, course), usable.profile().grading()));
  }

  /** Each finding in each of its cells as place and rule, such as {@code D2 unit-missing}. */
  static List<String> in(Grid grid) {
    return in(grid.workbook()).stream().flatMap(Finding::apart).map(Findings::brief).toList();
  }

  /** How much was read, as place and rule. */
  static List<String> ofCoverage(Workbook workbook) {
    return ofCoverageInFull(workbook).stream().map(Findings::brief).toList();
  }

  /** How much was read. */
  static List<Finding> ofCoverageInFull(Workbook workbook) {
    return ALL.check(Inspection.of(workbook, FUNCTIONS, Course.PLAIN)).stream()
        .filter(finding -> COVERAGE.contains(finding.rule().id()))
        .toList();
  }

  static String brief(Finding finding) {
    return finding.cell().place() + " " + finding.rule().id();
  }

  /** What was found, in English. */
  static String found(Finding finding) {
    return ENGLISH.say(finding.found());
  }

  /** What was found, and where else, in English. */
  static String said(Finding finding) {
    return ENGLISH.say(finding.said());
  }

  /** What was expected, in English. */
  static String expected(Finding finding) {
    return ENGLISH.say(finding.expected());
  }

  /** How to put it right, in English. */
  static String fix(Finding finding) {
    return ENGLISH.say(finding.rule().fix());
  }

  /** The one finding of a workbook. */
  static Finding only(Grid grid) {
    List<Finding> findings = in(grid.workbook());
    if (findings.size() != 1) {
      throw new AssertionError("not one finding: " + findings);
    }
    return findings.get(0);
  }
}
