package tenthmark.addin.window;

import com.sun.star.uno.Exception;
import java.util.concurrent.CompletableFuture;
import tenthmark.addin.menu.Workplace;

/** A small window that is there as long as some work takes, and by which it can be given up. */
public final class Waiting {

  private static final String CANCEL = "cancel";

  private Waiting() {}

  /** Shows it; to close it, by whatever way, cancels the work. */
  @SuppressWarnings("FutureReturnValueIgnored") // Whoever began the work sees how it ended.
  public static void show(CompletableFuture<?> work, String sentence, Workplace workplace)
      throws Exception {
    Window window = new Window(workplace, "Tenthmark", 170, 52);
    window
        .label("what", sentence, new Place(8, 8, 154, 18))
        .button(
            CANCEL,
            workplace.texts().say("window.cancel"),
            new Place(60, 31, 50, 15),
            () -> work.cancel(true))
        .show(() -> work.cancel(true));
    window.focus(CANCEL);
    work.whenComplete((done, failure) -> workplace.later(window::close));
  }
}
