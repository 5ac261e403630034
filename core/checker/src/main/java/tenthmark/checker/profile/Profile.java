package tenthmark.checker.profile;

import tenthmark.checker.course.Course;
import tenthmark.checker.rules.Grading;

/**
 * A course's profile: what it expects and what it makes of the rules.
 *
 * @param course what it expects
 * @param grading severities and points
 */
public record Profile(Course course, Grading grading) {

  /** The profile of a course that has none. */
  public static final Profile NONE = new Profile(Course.PLAIN, Grading.DECLARED);
}
