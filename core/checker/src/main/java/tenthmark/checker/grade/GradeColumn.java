package tenthmark.checker.grade;

/** What a column of the grade table can hold. */
public enum GradeColumn {
  /** The student's id. */
  ID,
  /** The student's name. */
  NAME,
  /** The section of the course. */
  SECTION,
  /** The maximum without the points lost; empty where there is none. */
  SCORE,
  /** The maximum. */
  MAXIMUM,
  /** What all findings cost. */
  POINTS_LOST,
  /** Whether there is a score, or why not. */
  STATUS,
  /** How many attempts were handed in. */
  ATTEMPTS,
  /** When the attempt that counts was handed in. */
  TIME,
  /** The workbook that counts. */
  WORKBOOK
}
