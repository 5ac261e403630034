package tenthmark.checker.profile;

import tenthmark.checker.course.Course;
import tenthmark.checker.rules.Grading;
import tenthmark.measurement.wording.Language;

/**
 * A course's profile: what it expects and what it makes of the rules.
 *
 * @param course what it expects
 * @param grading severities and points
 * @param language of reports
 * @param administration how it is run
 */
public record Profile(
    Course course, Grading grading, Language language, Administration administration) {

  /** The profile of a course that has none. */
  public static final Profile NONE =
      new Profile(Course.PLAIN, Grading.DECLARED, Language.ENGLISH, Administration.STANDARD);
}
