package tenthmark.checker.rules;

import java.util.List;
import java.util.Set;
import tenthmark.checker.course.Course;
import tenthmark.checker.profile.Profile;
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
    return RULES.check(read(workbook, Course.PLAIN), grading);
  }

  /** What is to be put right in a workbook that holds no record, as place and rule. */
  static List<String> inCells(Grid grid) {
    return inCells(grid.workbook()).stream().flatMap(Finding::apart).map(Findings::brief).toList();
  }

  /** The same in full. */
  static List<Finding> inCells(Workbook workbook) {
    return toMend(allInCells(workbook, Grading.DECLARED));
  }

  /** What the rules find in a workbook that holds no record, and what follows from what. */
  static List<Finding> allInCells(Workbook workbook, Grading grading) {
    return RULES.check(withoutRecord(workbook, Course.PLAIN), grading);
  }

  /** What the rules find for a course with this profile in a workbook that holds no record. */
  static List<Finding> inCells(Grid grid, String profile) {
    Profile own = profile(profile);
    return toMend(RULES.check(withoutRecord(grid.workbook(), own.course()), own.grading()));
  }

  private static Inspection withoutRecord(Workbook workbook, Course course) {
    Inspection inspection = Inspection.of(workbook, FUNCTIONS, course);
    if (!inspection.records().isEmpty()) {
      throw new AssertionError("a record was read in " + workbook.sheets().get(0).name());
    }
    return inspection;
  }

  /** The one finding of a workbook that holds no record. */
  static Finding onlyInCells(Grid grid) {
    return only(inCells(grid.workbook()));
  }

  /**
   * A workbook as the rules see it. A rule that finds nothing says something only where it had
   * something to look at: a reader that recognises no record fails every test.
   */
  private static Inspection read(Workbook workbook, Course course) {
    Inspection inspection = Inspection.of(workbook, FUNCTIONS, course);
    if (inspection.records().isEmpty()) {
      throw new AssertionError("no record was read in " + workbook.sheets().get(0).name());
    }
    return inspection;
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
    Profile own = profile(profile);
    return toMend(RULES.check(read(workbook, own.course()), own.grading()));
  }

  private static Profile profile(String text) {
    if (new ProfileReader(ALL.ids()).read(text) instanceof ProfileText.Usable usable) {
      return usable.profile();
    }
    throw new AssertionError("not a profile: " + text);
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
    return only(in(grid.workbook()));
  }

  private static Finding only(List<Finding> findings) {
    if (findings.size() != 1) {
      throw new AssertionError("not one finding: " + findings);
    }
    return findings.get(0);
  }
}
