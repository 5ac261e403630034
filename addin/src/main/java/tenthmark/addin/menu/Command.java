package tenthmark.addin.menu;

import com.sun.star.uno.Exception;
import java.io.IOException;

/** What one entry of the menu does, on the spreadsheet in whose window it was chosen. */
public interface Command {

  /** Its name in the address {@code tenthmark:<name>}. */
  String name();

  /**
   * Does it.
   *
   * @throws RefusalException if it cannot be done as things are, which a sentence tells
   */
  void run(Workplace workplace) throws Exception, IOException;
}
