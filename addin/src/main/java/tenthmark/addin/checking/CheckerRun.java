package tenthmark.addin.checking;

import com.sun.star.uno.Exception;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;
import tenthmark.addin.window.Waiting;

/**
 * One run of the checker. However it ends, its process ends too and its folder is removed.
 *
 * @param folder where its input lies and its output goes
 */
record CheckerRun(Process process, TemporaryFolder folder) {

  static final String OUT = "out";
  static final String ERR = "err";

  /**
   * What it wrote.
   *
   * @param status its exit status
   */
  record Output(int status, String out, String err) {

    /** The exit status that says why the checker could not do what it was asked. */
    private static final int REFUSED = 2;

    /** A process that a signal ended has this exit status and the signal's number more. */
    private static final int SIGNAL = 128;

    private static final int SIGNALS = 64;

    /** As much of an output that was not meant for people as a window can show. */
    private static final int EXCERPT = 500;

    /** Whether it came to its end, which alone does not say that all is there. */
    boolean isDone() {
      return status == 0 || status == 1;
    }

    /** What it says about a copy, as about the document that it was made of. */
    String messages(Path copy, String title) {
      return err.replace(copy.toString(), title);
    }

    /**
     * Why there is no result.
     *
     * @param refused key of the sentence that goes before what the checker says
     */
    RefusalException refusal(String refused, Path copy, String title) {
      if (status == REFUSED) {
        return new RefusalException(refused, messages(copy, title));
      }
      if (status > SIGNAL && status <= SIGNAL + SIGNALS) {
        return new RefusalException("checker.killed", Integer.toString(status - SIGNAL));
      }
      String said = err.isBlank() ? out.strip() : messages(copy, title);
      return new RefusalException(
          "checker.crashed",
          Integer.toString(status),
          said.substring(0, Math.min(EXCERPT, said.length())));
    }
  }

  /** What is done with the output. */
  @FunctionalInterface
  interface Next {

    /** Takes it. */
    void take(Output output) throws Exception, IOException;
  }

  /**
   * Goes on with the output once it has ended: at once for a program that waits for it, later in
   * the office's own thread for a user, who can give it up meanwhile.
   *
   * @param task key of the sentence that says what is done
   */
  @SuppressWarnings("FutureReturnValueIgnored") // What comes of it is looked at in finish.
  void then(Next next, Duration longest, String task, Workplace workplace)
      throws Exception, IOException {
    CompletableFuture<Process> end =
        process.onExit().orTimeout(longest.toMillis(), TimeUnit.MILLISECONDS);
    if (workplace.conversation().canShowWindows()) {
      Waiting.show(end, workplace.texts().say(task), workplace);
      end.whenComplete((done, failure) -> workplace.later(() -> finish(end, next, longest)));
    } else {
      end.exceptionally(failure -> process).join();
      finish(end, next, longest);
    }
  }

  private void finish(CompletableFuture<Process> end, Next next, Duration longest)
      throws Exception, IOException {
    try (folder) {
      process.destroyForcibly().onExit().join();
      if (end.isCancelled()) {
        return;
      }
      if (end.isCompletedExceptionally()) {
        throw new RefusalException("checker.too-long", Long.toString(longest.toSeconds()));
      }
      next.take(
          new Output(
              process.exitValue(),
              Files.readString(folder.file(OUT)),
              Files.readString(folder.file(ERR)).strip()));
    }
  }
}
