package tenthmark.checker.batch;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.workbook.Reason;

/**
 * Checks many files, several at a time, and hands on their reports in the order of the files.
 *
 * @param threads how many files are open at a time
 */
public record Batch(int threads) {

  /**
   * How many reports per thread may wait for a slow file before them: enough to keep the threads at
   * work, few enough to bound the memory.
   */
  private static final int AHEAD = 32;

  /** Checks the number of threads. */
  public Batch {
    if (threads < 1) {
      throw new IllegalArgumentException("threads is " + threads + " but must be at least 1");
    }
  }

  /** Runs every job; {@code next} is called by this thread, as soon as it is a file's turn. */
  public void run(List<Job> jobs, Consumer<Finished> next) {
    Turns turns = new Turns();
    ExecutorService pool = Executors.newFixedThreadPool(threads, Batch::worker);
    try {
      Queue<Open> open = new ArrayDeque<>();
      for (Job job : jobs) {
        if (open.size() == threads * AHEAD) {
          next.accept(open.remove().finished());
        }
        open.add(new Open(job, pool.submit(() -> turns.finish(job))));
      }
      while (!open.isEmpty()) {
        next.accept(open.remove().finished());
      }
    } finally {
      pool.shutdownNow();
    }
  }

  /** A daemon, so that a file that does not stop cannot keep the program alive. */
  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "check");
    thread.setDaemon(true);
    return thread;
  }

  private record Open(Job job, Future<Finished> end) {

    Finished finished() {
      try {
        return end.get();
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        throw new CancellationException("the batch was stopped");
      } catch (ExecutionException fault) {
        // Memory may be so short that even the line about a file cannot be made beside the others.
        String reason = Reason.of(fault.getCause());
        return new Finished(FileReport.unchecked(job.file(), reason), List.of());
      }
    }
  }
}
