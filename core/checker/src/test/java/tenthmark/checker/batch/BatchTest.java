package tenthmark.checker.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.report.Contents;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Unwritten;

class BatchTest {

  private static final String FAULT = "the checker itself failed (please report this: ";

  private final List<FileReport> reports = new ArrayList<>();

  private final List<String> unwritten = new ArrayList<>();

  private void add(Finished finished) {
    reports.add(finished.report());
    finished.unwritten().stream().map(Unwritten::reason).forEach(unwritten::add);
  }

  private static Path file(int number) {
    return Path.of("student-%04d.ods".formatted(number));
  }

  private static FileReport clean(int number) {
    return FileReport.checked(file(number), Contents.NONE, List.of());
  }

  private static Job job(int number, Supplier<FileReport> check) {
    return new Job(file(number), check, report -> List.of());
  }

  @Nested
  class Order {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 8})
    void isThatOfTheFilesWhateverTheThreads(int threads) {
      Random random = new Random(20261125);
      List<Job> jobs =
          IntStream.range(0, 500)
              .mapToObj(
                  number -> {
                    int millis = random.nextInt(3);
                    return job(
                        number,
                        () -> {
                          sleep(millis);
                          return clean(number);
                        });
                  })
              .toList();

      new Batch(threads).run(jobs, BatchTest.this::add);

      assertThat(reports)
          .extracting(FileReport::file)
          .containsExactlyElementsOf(jobs.stream().map(Job::file).toList());
    }

    @Test
    void handsOnTheFirstReportWhileLaterFilesStillRun() throws Exception {
      CountDownLatch handedOn = new CountDownLatch(1);
      List<Job> jobs =
          List.of(
              job(0, () -> clean(0)),
              job(
                  1,
                  () ->
                      await(handedOn)
                          ? clean(1)
                          : FileReport.unchecked(file(1), "the first report was held back")));

      new Batch(2)
          .run(
              jobs,
              finished -> {
                handedOn.countDown();
                add(finished);
              });

      assertThat(reports).containsExactly(clean(0), clean(1));
    }
  }

  @Nested
  class Bounds {

    @Test
    void asManyFilesAreOpenAsThereAreThreads() {
      AtomicInteger open = new AtomicInteger();
      AtomicInteger most = new AtomicInteger();
      CountDownLatch three = new CountDownLatch(3);
      List<Job> jobs =
          IntStream.range(0, 100)
              .mapToObj(
                  number ->
                      job(
                          number,
                          () -> {
                            most.accumulateAndGet(open.incrementAndGet(), Math::max);
                            three.countDown();
                            await(three);
                            open.decrementAndGet();
                            return clean(number);
                          }))
              .toList();

      new Batch(3).run(jobs, BatchTest.this::add);

      assertThat(most).hasValue(3);
    }

    @Test
    void aSlowFileLetsOnlySoManyReportsWait() {
      int waiting = 2 * 32 - 1;
      CountDownLatch allThatMayWait = new CountDownLatch(waiting);
      AtomicInteger done = new AtomicInteger();
      AtomicInteger doneMeanwhile = new AtomicInteger();
      List<Job> jobs = new ArrayList<>();
      jobs.add(
          job(
              0,
              () -> {
                await(allThatMayWait);
                sleep(50);
                doneMeanwhile.set(done.get());
                return clean(0);
              }));
      IntStream.range(1, 1000)
          .forEach(
              number ->
                  jobs.add(
                      job(
                          number,
                          () -> {
                            done.incrementAndGet();
                            allThatMayWait.countDown();
                            return clean(number);
                          })));

      new Batch(2).run(jobs, BatchTest.this::add);

      assertThat(doneMeanwhile).hasValue(waiting);
      assertThat(reports).hasSize(1000);
    }

    @Test
    void thereIsAtLeastOneThread() {
      assertThatThrownBy(() -> new Batch(0)).hasMessage("threads is 0 but must be at least 1");
    }
  }

  @Nested
  class Failures {

    @Test
    void ofAnyKindBecomeTheReportOfTheirFileAndTheBatchGoesOn() {
      List<Job> jobs =
          List.of(
              job(0, () -> failing(new IllegalStateException("a fault"))),
              job(1, () -> nested(0)),
              job(2, () -> failing(new OutOfMemoryError("heap"))),
              job(3, () -> failing(new NoClassDefFoundError("a/Part"))),
              job(4, () -> failing(new AssertionError("no"))),
              job(5, () -> clean(5)));

      new Batch(2).run(jobs, BatchTest.this::add);

      assertThat(reports)
          .extracting(report -> report.problem().orElse("none"))
          .satisfiesExactly(
              line -> assertThat(line).startsWith(FAULT + "IllegalStateException at BatchTest"),
              line -> assertThat(line).isEqualTo("its parts are nested too deeply"),
              line -> assertThat(line).isEqualTo("it needs more memory than the checker has"),
              line -> assertThat(line).startsWith(FAULT + "NoClassDefFoundError at BatchTest"),
              line -> assertThat(line).startsWith(FAULT + "AssertionError at BatchTest"),
              line -> assertThat(line).isEqualTo("none"));
    }

    @Test
    void ofRealAllocationsLeaveTheOtherFilesWhole() {
      List<Job> jobs =
          IntStream.range(0, 20)
              .mapToObj(number -> job(number, () -> number % 5 == 0 ? hoarding() : clean(number)))
              .toList();

      new Batch(2).run(jobs, BatchTest.this::add);

      assertThat(reports).filteredOn(report -> report.problem().isPresent()).hasSize(4);
    }

    private static FileReport hoarding() {
      // Larger than any array may be, so that the error is real and no memory is taken.
      return clean(new long[Integer.MAX_VALUE].length);
    }

    private static FileReport nested(int depth) {
      return depth < 0 ? clean(0) : nested(depth + 1);
    }

    private static FileReport failing(Error error) {
      throw error;
    }

    private static FileReport failing(RuntimeException fault) {
      throw fault;
    }
  }

  @Nested
  class Writing {

    private static List<Unwritten> missing(String reason) {
      return List.of(new Unwritten("its page", reason, true));
    }

    private final AtomicInteger checks = new AtomicInteger();
    private final AtomicInteger writes = new AtomicInteger();

    private Job job(int number, Supplier<List<Unwritten>> write) {
      return new Job(
          file(number),
          () -> {
            checks.incrementAndGet();
            return clean(number);
          },
          report -> write.get());
    }

    @Test
    void thatFailsInAnyWayTakesNoReportAway() {
      List<Job> jobs =
          List.of(
              job(0, () -> missing("the disk is full")),
              job(1, () -> failing(new IllegalStateException("a fault"))),
              job(2, () -> failing(new OutOfMemoryError("heap"))),
              job(3, List::of));

      new Batch(2).run(jobs, BatchTest.this::add);

      assertThat(reports).containsExactly(clean(0), clean(1), clean(2), clean(3));
      assertThat(unwritten)
          .satisfiesExactly(
              line -> assertThat(line).isEqualTo("the disk is full"),
              line -> assertThat(line).startsWith(FAULT + "IllegalStateException at BatchTest"),
              line -> assertThat(line).isEqualTo("it needs more memory than the checker has"));
    }

    @Test
    void hasASecondTurnWithoutAnotherCheck() {
      new Batch(2)
          .run(
              List.of(
                  job(
                      0,
                      () ->
                          writes.incrementAndGet() == 1
                              ? failing(new OutOfMemoryError("heap"))
                              : List.of())),
              BatchTest.this::add);

      assertThat(writes).hasValue(2);
      assertThat(checks).hasValue(1);
      assertThat(unwritten).isEmpty();
    }

    private static List<Unwritten> failing(Error error) {
      throw error;
    }

    private static List<Unwritten> failing(RuntimeException fault) {
      throw fault;
    }
  }

  @Nested
  class SecondTurns {

    private final AtomicInteger runs = new AtomicInteger();

    @Test
    void areGivenToAFileThatFailedWhileAnotherExhaustedTheMemory() {
      CountDownLatch begun = new CountDownLatch(1);
      CountDownLatch failed = new CountDownLatch(1);
      List<Job> jobs =
          List.of(
              job(
                  0,
                  () -> {
                    begun.countDown();
                    await(failed);
                    throw new OutOfMemoryError("heap");
                  }),
              job(
                  1,
                  () -> {
                    await(begun);
                    failed.countDown();
                    return runs.incrementAndGet() == 1
                        ? FileReport.unchecked(file(1), "it takes longer than 20 s")
                        : clean(1);
                  }));

      new Batch(2).run(jobs, BatchTest.this::add);

      assertThat(reports.get(0).problem()).contains("it needs more memory than the checker has");
      assertThat(reports.get(1)).isEqualTo(clean(1));
    }

    @Test
    void areTakenAlone() {
      AtomicInteger open = new AtomicInteger();
      List<Integer> beside = Collections.synchronizedList(new ArrayList<>());
      List<Job> jobs =
          IntStream.range(0, 60)
              .mapToObj(
                  number ->
                      job(
                          number,
                          () -> {
                            int others = open.getAndIncrement();
                            try {
                              sleep(2);
                              return number == 7 ? exhausting(beside, others) : clean(number);
                            } finally {
                              open.decrementAndGet();
                            }
                          }))
              .toList();

      new Batch(4).run(jobs, BatchTest.this::add);

      assertThat(beside).hasSize(2);
      assertThat(beside.get(1)).isZero();
      assertThat(reports).filteredOn(report -> report.problem().isEmpty()).hasSize(59);
    }

    @Test
    void areNotGivenWhereTheMemorySuffices() {
      List<Job> jobs =
          List.of(
              job(
                  0,
                  () -> {
                    runs.incrementAndGet();
                    return FileReport.unchecked(file(0), "the file is damaged or cut short");
                  }),
              job(1, () -> clean(1)));

      new Batch(2).run(jobs, BatchTest.this::add);

      assertThat(runs.get()).isEqualTo(1);
    }

    private static FileReport exhausting(List<Integer> beside, int others) {
      beside.add(others);
      throw new OutOfMemoryError("heap");
    }
  }

  /** Whether it happened; the limit is for a fault only, however loaded the machine is. */
  private static boolean await(CountDownLatch latch) {
    try {
      return latch.await(5, TimeUnit.MINUTES);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  private static void sleep(int millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }
}
