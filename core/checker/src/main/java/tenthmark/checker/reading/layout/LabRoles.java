package tenthmark.checker.reading.layout;

import java.util.Optional;
import tenthmark.checker.evaluation.Call;
import tenthmark.checker.record.Field;

/** What the LAB functions say of a record. */
final class LabRoles {

  private LabRoles() {}

  /** The kind of contribution that a call computes; it has the name of its function's role. */
  static Optional<Field> contribution(Call call) {
    return Optional.of(call.function().role())
        .filter(role -> role.isContribution())
        .map(role -> Field.valueOf(role.name()));
  }
}
