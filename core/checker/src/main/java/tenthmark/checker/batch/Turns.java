package tenthmark.checker.batch;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import tenthmark.checker.report.FileReport;

/**
 * Lets jobs run side by side, which share one memory. Where one of them exhausts it, another may
 * fail or run out of time that is no worse than its neighbours: each that failed meanwhile, the one
 * that exhausted it included, has a second turn with no other beside it.
 */
final class Turns {

  /** Fair, so that a second turn comes before the next files. */
  private final ReadWriteLock lock = new ReentrantReadWriteLock(true);

  private final AtomicInteger shortages = new AtomicInteger();

  FileReport report(Job job) {
    int before = shortages.get();
    FileReport first = besideOthers(job);
    return first.problem().isEmpty() ? first : again(job, first, before);
  }

  private FileReport besideOthers(Job job) {
    lock.readLock().lock();
    try {
      FileReport report = job.run();
      if (report.ranOutOfMemory()) {
        shortages.incrementAndGet();
      }
      return report;
    } finally {
      lock.readLock().unlock();
    }
  }

  /** Waits for the jobs beside it, one of which may yet turn out to have exhausted the memory. */
  private FileReport again(Job job, FileReport first, int before) {
    lock.writeLock().lock();
    try {
      return shortages.get() == before ? first : job.run();
    } finally {
      lock.writeLock().unlock();
    }
  }
}
