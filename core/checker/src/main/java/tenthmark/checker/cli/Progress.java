package tenthmark.checker.cli;

import java.io.PrintWriter;

/** The last line of a terminal while a batch runs: how many of its files are done. */
final class Progress {

  private static final int WIDTH = 30;

  /** Back to the start of the line, and clear it (ECMA-48, EL). */
  private static final String CLEAR = "\r\u001b[K";

  private final PrintWriter terminal;
  private final int files;
  private int done;

  Progress(PrintWriter terminal, int files) {
    this.terminal = terminal;
    this.files = files;
  }

  /** One more file is done. */
  void step() {
    done++;
  }

  /** Shows the bar. */
  void show() {
    int full = WIDTH * done / files;
    terminal.print(
        CLEAR + "[" + "#".repeat(full) + ".".repeat(WIDTH - full) + "] " + done + " of " + files);
    terminal.flush();
  }

  /** Takes the bar away, so that other lines can be printed. */
  void clear() {
    terminal.print(CLEAR);
    terminal.flush();
  }
}
