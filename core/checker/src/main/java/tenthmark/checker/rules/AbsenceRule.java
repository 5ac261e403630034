package tenthmark.checker.rules;

import tenthmark.checker.record.Field;

/**
 * A rule that blames a record for a part that it lacks. Where the part may only not have been
 * understood, {@link Doubts} makes a note of the finding.
 */
interface AbsenceRule extends RecordRule {

  /** The part that is not there. */
  Field part();
}
