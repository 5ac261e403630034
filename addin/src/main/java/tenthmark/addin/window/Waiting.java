package tenthmark.addin.window;

import com.sun.star.awt.XDialog;
import com.sun.star.awt.XRequestCallback;
import com.sun.star.uno.Any;
import com.sun.star.uno.Exception;
import java.util.concurrent.CompletableFuture;
import tenthmark.addin.menu.Workplace;

/** A small window that is there as long as some work takes, and by which it can be given up. */
public final class Waiting implements AutoCloseable {

  private final Window window;
  private final XRequestCallback inTheOfficesThread;
  private boolean closed;

  private Waiting(String sentence, Workplace workplace) throws Exception {
    this.inTheOfficesThread =
        workplace.service(XRequestCallback.class, "com.sun.star.awt.AsyncCallback");
    this.window = new Window(workplace, "Tenthmark", 170, 52);
    window
        .label("what", sentence, new Place(8, 8, 154, 18))
        .cancelButton("cancel", workplace.texts().say("window.cancel"), new Place(60, 31, 50, 15));
  }

  /** Whether the work was done; otherwise the user did not want to wait any longer. */
  public static boolean until(CompletableFuture<?> work, String sentence, Workplace workplace)
      throws Exception {
    try (Waiting waiting = new Waiting(sentence, workplace)) {
      work.whenComplete((done, failed) -> waiting.end());
      waiting.window.dialog().execute();
      return work.isDone();
    }
  }

  /** From the office's own thread the window is ended only once it waits. */
  private void end() {
    XDialog dialog = window.dialog();
    inTheOfficesThread.addCallback(
        nothing -> {
          if (!closed) {
            dialog.endExecute();
          }
        },
        Any.VOID);
  }

  @Override
  public void close() {
    closed = true;
    window.close();
  }
}
