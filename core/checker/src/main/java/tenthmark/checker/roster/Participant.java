package tenthmark.checker.roster;

import java.util.List;
import java.util.Optional;
import tenthmark.checker.submission.Label;

/**
 * A student and what he or she handed in.
 *
 * @param student the student
 * @param listed whether the student is on the roster, or there is none
 * @param attempts the workbooks, the earliest first
 * @param strays other files, which are not checked
 */
public record Participant(
    Student student, boolean listed, List<Attempt> attempts, List<Attempt> strays) {

  /** Copies the lists. */
  public Participant {
    attempts =
        attempts.stream().sorted((a, b) -> Label.EARLIER.compare(a.label(), b.label())).toList();
    strays = List.copyOf(strays);
  }

  /** The newest workbook; none where nothing tells which of several is the newest. */
  public Optional<Attempt> newest() {
    if (attempts.isEmpty() || severalAtOnce()) {
      return Optional.empty();
    }
    return Optional.of(attempts.get(attempts.size() - 1));
  }

  /** The workbook before the newest one, with which it is compared. */
  public Optional<Attempt> before() {
    return newest().isPresent() && attempts.size() > 1
        ? Optional.of(attempts.get(attempts.size() - 2))
        : Optional.empty();
  }

  /** Whether the newest workbook has another beside it that is as new. */
  public boolean severalAtOnce() {
    int count = attempts.size();
    return count > 1
        && Label.EARLIER.compare(attempts.get(count - 2).label(), attempts.get(count - 1).label())
            == 0;
  }
}
