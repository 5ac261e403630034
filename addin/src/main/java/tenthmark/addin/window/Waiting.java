package tenthmark.addin.window;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.XDialog;
import com.sun.star.awt.XTopWindow;
import com.sun.star.uno.Exception;
import java.util.concurrent.CompletableFuture;
import tenthmark.addin.menu.Workplace;

/** A small window that is there as long as some work takes, and by which it can be given up. */
public final class Waiting {

  private Waiting() {}

  /** Whether the work was done; otherwise the user did not want to wait any longer. */
  public static boolean until(CompletableFuture<?> work, String sentence, Workplace workplace)
      throws Exception {
    try (Window window = new Window(workplace, "Tenthmark", 170, 52)) {
      window
          .label("what", sentence, new Place(8, 8, 154, 18))
          .cancelButton(
              "cancel", workplace.texts().say("window.cancel"), new Place(60, 31, 50, 15));
      XDialog dialog = window.dialog();
      // Only a window that is there can be ended.
      queryInterface(XTopWindow.class, dialog)
          .addTopWindowListener(
              new Listeners.OfOpening(
                  event -> work.whenCompleteAsync((done, failed) -> dialog.endExecute())));
      dialog.execute();
      return work.isDone();
    }
  }
}
