package tenthmark.checker.profile;

import tenthmark.checker.grade.GradeTableColumns;
import tenthmark.checker.roster.RosterColumns;
import tenthmark.checker.submission.Naming;

/**
 * How a course is run: what its lists and names look like. Nothing of it changes what is found in a
 * workbook.
 *
 * @param submissions how they are named
 * @param roster what its columns are called
 * @param grades what the grade table looks like
 */
public record Administration(Naming submissions, RosterColumns roster, GradeTableColumns grades) {

  /** Of a course that does not say. */
  public static final Administration STANDARD =
      new Administration(Naming.NONE, RosterColumns.STANDARD, GradeTableColumns.STANDARD);
}
