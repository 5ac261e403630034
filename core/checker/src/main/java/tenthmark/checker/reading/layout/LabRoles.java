package tenthmark.checker.reading.layout;

import java.util.Map;
import java.util.Optional;
import tenthmark.checker.record.Field;

/** What the LAB functions say of a record. */
final class LabRoles {

  static final String RESULT = "LAB_RESULT";
  static final String TOTAL = "LAB_TOTAL";
  static final int VALUE = 0;
  static final int UNCERTAINTY = 1;
  static final int UNIT = 2;

  private static final Map<String, Field> CONTRIBUTIONS =
      Map.of(
          "LAB_READING", Field.READING,
          "LAB_FUZZY", Field.PHYSICAL,
          "LAB_DISPLAY", Field.INSTRUMENT,
          "LAB_HANDTIMED", Field.TIMING,
          "LAB_REPEATS", Field.REPEAT);

  private LabRoles() {}

  /** The kind of contribution that a function computes. */
  static Optional<Field> contribution(String function) {
    return Optional.ofNullable(CONTRIBUTIONS.get(function));
  }
}
