package tenthmark.checker.batch;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Function;
import java.util.function.Supplier;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Unwritten;
import tenthmark.checker.workbook.UnreadableFileException;

/**
 * Lets jobs run side by side, which share one memory. Where one of them exhausts it, another may
 * fail or run out of time that is no worse than its neighbours: each that failed meanwhile, the one
 * that exhausted it included, has a second turn with no other beside it.
 */
final class Turns {

  /** Fair, so that a second turn comes before the next files. */
  private final ReadWriteLock lock = new ReentrantReadWriteLock(true);

  private final AtomicInteger shortages = new AtomicInteger();

  /** The check and the writing of its report have turns of their own. */
  Finished finish(Job job) {
    FileReport report = turn(job::checked, checked -> checked.problem().stream().toList());
    List<Unwritten> unwritten =
        turn(() -> job.written(report), all -> all.stream().map(Unwritten::reason).toList());
    return new Finished(report, unwritten);
  }

  private <T> T turn(Supplier<T> work, Function<T, List<String>> problems) {
    int before = shortages.get();
    T first = besideOthers(work, problems);
    return problems.apply(first).isEmpty() ? first : again(work, first, before);
  }

  private <T> T besideOthers(Supplier<T> work, Function<T, List<String>> problems) {
    lock.readLock().lock();
    try {
      T first = work.get();
      if (problems.apply(first).contains(UnreadableFileException.OUT_OF_MEMORY)) {
        shortages.incrementAndGet();
      }
      return first;
    } finally {
      lock.readLock().unlock();
    }
  }

  /** Waits for the jobs beside it, one of which may yet turn out to have exhausted the memory. */
  private <T> T again(Supplier<T> work, T first, int before) {
    lock.writeLock().lock();
    try {
      return shortages.get() == before ? first : work.get();
    } finally {
      lock.writeLock().unlock();
    }
  }
}
