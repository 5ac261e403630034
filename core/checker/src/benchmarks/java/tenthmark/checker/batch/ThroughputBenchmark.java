package tenthmark.checker.batch;

import com.sun.management.OperatingSystemMXBean;
import java.io.File;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import org.apache.poi.ss.formula.udf.DefaultUDFFinder;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;

/**
 * Checks a growing number of ordinary workbooks, and side by side opens and re-evaluates the same
 * ones through Apache POI, whose LAB functions do nothing here. Prints a table.
 */
public final class ThroughputBenchmark {

  private static final int[] COUNTS = {100, 500, 1000, 2000};
  private static final int THREADS = 2;

  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private static final FreeRefFunction NOTHING = (arguments, context) -> new NumberEval(1);

  private final FileChecker checker = FileChecker.load();
  private final Catalogue functions = Catalogue.load();

  private ThroughputBenchmark() {}

  public static void main(String... arguments) throws Exception {
    new ThroughputBenchmark().run(Path.of(arguments[0]));
  }

  private void run(Path folder) throws Exception {
    List<Path> files = write(folder, COUNTS[COUNTS.length - 1]);
    System.out.println(about(files));
    poi(files.subList(0, 100));
    check(files.subList(0, 100));
    System.out.println("files  checker s  files/s  POI s  ratio  ratio of processor time  load");
    for (int count : COUNTS) {
      List<Path> some = files.subList(0, count);
      // Java gets faster with each pass: with two of each in this order neither gains by it.
      Spent before = poi(some);
      Spent ours = check(some).meanWith(check(some));
      Spent poi = before.meanWith(poi(some));
      System.out.printf(
          Locale.ROOT,
          "%5d  %9.2f  %7.1f  %5.2f  %5.2f  %23.2f  %4.1f%n",
          count,
          ours.wall(),
          count / ours.wall(),
          poi.wall(),
          ours.wall() / poi.wall(),
          ours.processor() / poi.processor(),
          SYSTEM.getSystemLoadAverage());
    }
  }

  /** Seconds by the clock and of the processors; the latter hardly depend on other programs. */
  private record Spent(double wall, double processor) {

    static Spent now() {
      return new Spent(System.nanoTime() / 1e9, SYSTEM.getProcessCpuTime() / 1e9);
    }

    Spent since() {
      Spent now = now();
      return new Spent(now.wall - wall, now.processor - processor);
    }

    Spent meanWith(Spent other) {
      return new Spent((wall + other.wall) / 2, (processor + other.processor) / 2);
    }
  }

  private List<Path> write(Path folder, int count) throws IOException {
    Files.createDirectories(folder);
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Path file = folder.resolve("student" + i + ".xlsx");
      files.add(Files.exists(file) ? file : new OrdinaryWorkbook(i, functions).write(file));
    }
    return files;
  }

  private String about(List<Path> files) throws Exception {
    long formulas = OrdinaryWorkbook.formulas(WorkbookFile.read(files.get(0)));
    if (formulas != OrdinaryWorkbook.FORMULAS) {
      throw new IllegalStateException(formulas + " formulas");
    }
    return String.format(
        Locale.ROOT,
        "%d formulas and %d records a file, %d bytes, %d findings in the first; %d MiB heap, %d threads",
        formulas,
        OrdinaryWorkbook.RECORDS,
        Files.size(files.get(0)),
        checker.check(files.get(0)).findings().size(),
        Runtime.getRuntime().maxMemory() >> 20,
        THREADS);
  }

  private Spent check(List<Path> files) {
    Spent start = Spent.now();
    AtomicInteger seen = new AtomicInteger();
    new Batch(THREADS)
        .run(
            files.stream()
                .map(file -> new Job(file, () -> checker.check(file), report -> Optional.empty()))
                .toList(),
            finished -> {
              FileReport report = finished.report();
              report.problem().ifPresent(problem -> fail(report.file(), problem));
              seen.incrementAndGet();
            });
    if (seen.get() != files.size()) {
      throw new IllegalStateException("reports: " + seen);
    }
    return start.since();
  }

  private static void fail(Path file, String problem) {
    throw new IllegalStateException(file + ": " + problem);
  }

  private Spent poi(List<Path> files) throws Exception {
    Spent start = Spent.now();
    ExecutorService pool = Executors.newFixedThreadPool(THREADS);
    try {
      List<Future<?>> open = new ArrayList<>();
      for (Path file : files) {
        open.add(pool.submit(() -> evaluated(file.toFile())));
      }
      for (Future<?> one : open) {
        one.get();
      }
    } finally {
      pool.shutdown();
    }
    return start.since();
  }

  private Void evaluated(File file) throws IOException {
    try (Workbook workbook = WorkbookFactory.create(file, null, true)) {
      String[] names =
          functions.functions().stream()
              .map(function -> function.declaration().displayName())
              .toArray(String[]::new);
      FreeRefFunction[] nothing = new FreeRefFunction[names.length];
      Arrays.fill(nothing, NOTHING);
      workbook.addToolPack(new DefaultUDFFinder(names, nothing));
      workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
      return null;
    }
  }
}
