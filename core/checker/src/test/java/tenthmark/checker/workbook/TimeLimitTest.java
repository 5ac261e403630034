package tenthmark.checker.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class TimeLimitTest {

  /** A busy computer lets a file wait: no test can wait so little that one passes by the clock. */
  @Test
  void doesNotCountTheTimeInWhichOthersHaveTheProcessor() throws Exception {
    Duration limit = Duration.ofMillis(500);

    String result =
        TimeLimit.within(
            limit,
            () -> {
              Thread.sleep(limit.multipliedBy(2).toMillis());
              return "done";
            });

    assertThat(result).isEqualTo("done");
  }

  @Test
  void stopsWorkThatUsesItUp() {
    assertThatThrownBy(
            () ->
                TimeLimit.within(
                    Duration.ofMillis(200),
                    () -> {
                      while (true) {
                        OutOfTimeException.ifInterrupted();
                      }
                    }))
        .isInstanceOf(UnreadableFileException.class)
        .hasMessage("it takes longer than 0.2 s and was stopped");
  }

  @Test
  void stopsWorkThatWaitsForEver() {
    CountDownLatch never = new CountDownLatch(1);

    assertThatThrownBy(
            () ->
                TimeLimit.within(
                    Duration.ofMillis(50),
                    () -> {
                      never.await();
                      return "done";
                    }))
        .isInstanceOf(UnreadableFileException.class);
  }
}
