package tenthmark.checker.workbook;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Gives the work on each file a time, after which the next file has its turn. */
public final class TimeLimit {

  /** The same on every thread, so that a deeply nested formula fares the same however run. */
  private static final long STACK_BYTES = 4L << 20;

  /** How long interrupted work may take to notice before its thread is left behind. */
  private static final Duration GRACE = Duration.ofSeconds(2);

  private TimeLimit() {}

  /**
   * Does the work on a thread of its own and waits for it.
   *
   * @throws UnreadableFileException by the work, or if it takes longer than the limit
   */
  public static <T> T within(Duration limit, Callable<T> work) throws UnreadableFileException {
    FutureTask<T> task = new FutureTask<>(work);
    Thread thread = new Thread(null, task, Thread.currentThread().getName() + "-file", STACK_BYTES);
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException late) {
      stop(thread);
      throw tooSlow(limit);
    } catch (InterruptedException stopped) {
      stop(thread);
      Thread.currentThread().interrupt();
      throw new UnreadableFileException("the check was stopped", stopped);
    } catch (ExecutionException failure) {
      throw failed(failure.getCause());
    }
  }

  private static UnreadableFileException tooSlow(Duration limit) {
    return new UnreadableFileException(
        "it takes longer than " + limit.toMillis() / 1000.0 + " s and was stopped");
  }

  private static UnreadableFileException failed(Throwable cause) {
    if (cause instanceof UnreadableFileException unreadable) {
      return unreadable;
    }
    if (cause instanceof OutOfMemoryError) {
      return new UnreadableFileException(UnreadableFileException.OUT_OF_MEMORY, cause);
    }
    if (cause instanceof Error error) {
      throw error;
    }
    throw cause instanceof RuntimeException fault ? fault : new IllegalStateException(cause);
  }

  private static void stop(Thread thread) {
    thread.interrupt();
    try {
      thread.join(GRACE.toMillis());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
