package tenthmark.checker.submission;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the path of a submission says about it.
 *
 * @param id of the student
 * @param name of the student
 * @param section of the course
 * @param attempt its number
 * @param time when it was handed in, by the clock of whoever wrote it into the name
 */
public record Label(
    Optional<String> id,
    Optional<String> name,
    Optional<String> section,
    OptionalInt attempt,
    Optional<LocalDateTime> time) {

  /** Of a path that says nothing. */
  public static final Label NONE =
      new Label(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalInt.empty(),
          Optional.empty());

  /** Earlier before later; without time and number nothing tells two attempts apart. */
  public static final Comparator<Label> EARLIER =
      Comparator.comparing((Label label) -> label.time().orElse(LocalDateTime.MIN))
          .thenComparing(label -> label.attempt().orElse(0));
}
