package tenthmark.checker.workbook;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Gives the work on each file a time, after which the next file has its turn. What counts is the
 * processor time of the work itself, so that no file fails because others keep the computer busy;
 * work that waits instead, as for a drive that does not answer, is stopped after {@value #PATIENCE}
 * times as long by the clock.
 */
public final class TimeLimit {

  /** The same on every thread, so that a deeply nested formula fares the same however run. */
  private static final long STACK_BYTES = 4L << 20;

  /** How long interrupted work may take to notice before its thread is left behind. */
  private static final Duration GRACE = Duration.ofSeconds(2);

  private static final int PATIENCE = 10;

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

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
      return result(task, thread, limit);
    } catch (InterruptedException stopped) {
      stop(thread);
      Thread.currentThread().interrupt();
      throw new UnreadableFileException("the check was stopped", stopped);
    } catch (ExecutionException failure) {
      throw failed(failure.getCause());
    }
  }

  private static <T> T result(FutureTask<T> task, Thread thread, Duration limit)
      throws InterruptedException, ExecutionException, UnreadableFileException {
    long begin = System.nanoTime();
    long end = begin + PATIENCE * limit.toNanos();
    // It cannot have used more than has gone by.
    for (long left = limit.toNanos();
        left > 0 && System.nanoTime() < end;
        left = limit.toNanos() - used(thread, begin)) {
      try {
        return task.get(Math.min(left + 1, end - System.nanoTime()), TimeUnit.NANOSECONDS);
      } catch (TimeoutException notYet) {
        // How much it has used is looked at before the next round.
      }
    }
    // A thread that has ended while it was looked at tells no processor time any more.
    if (task.isDone()) {
      return task.get();
    }
    stop(thread);
    throw tooSlow(limit);
  }

  /** Processor time; where the computer does not tell it, that by the clock. */
  private static long used(Thread thread, long begin) {
    long used =
        THREADS.isThreadCpuTimeSupported() && THREADS.isThreadCpuTimeEnabled()
            ? THREADS.getThreadCpuTime(thread.getId())
            : -1;
    return used < 0 ? System.nanoTime() - begin : used;
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
