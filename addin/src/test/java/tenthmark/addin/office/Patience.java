package tenthmark.addin.office;

import com.sun.star.lang.DisposedException;
import com.sun.star.lang.IndexOutOfBoundsException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * Waiting for what a program does in its own time. What is waited for comes within a second on a
 * quiet machine; the limit is for loaded ones, and for tests that fail.
 */
public final class Patience {

  private static final Duration LIMIT = Duration.ofMinutes(3);
  private static final Duration POLL = Duration.ofMillis(50);

  private Patience() {}

  /** What is asked for again and again until it is there. */
  public static <T> T await(String what, Callable<Optional<T>> wanted) throws Exception {
    Instant end = Instant.now().plus(LIMIT);
    while (Instant.now().isBefore(end)) {
      Optional<T> found = attempted(wanted);
      if (found.isPresent()) {
        return found.get();
      }
      Thread.sleep(POLL.toMillis());
    }
    throw new AssertionError("waited " + LIMIT.toSeconds() + " seconds in vain for " + what);
  }

  /** Waits until something holds. */
  public static void until(String what, Callable<Boolean> holds) throws Exception {
    await(what, () -> Optional.of(holds.call()).filter(Boolean::booleanValue));
  }

  /** Nothing yet where a window closes, or its parts change, while it is looked at. */
  private static <T> Optional<T> attempted(Callable<Optional<T>> wanted) throws Exception {
    try {
      return wanted.call();
    } catch (DisposedException | IndexOutOfBoundsException changing) {
      return Optional.empty();
    }
  }
}
