package tenthmark.checker.cli;

import java.io.Console;
import java.util.Optional;

/** The terminal that the program was started at, if there is one. */
final class Terminal {

  private Terminal() {}

  /**
   * The console, where input and output are a terminal. From Java 22 on there is a console in a
   * pipe too, and it says whether it is a terminal.
   */
  static Optional<Console> find() {
    return Optional.ofNullable(System.console()).filter(Terminal::isTerminal);
  }

  private static boolean isTerminal(Console console) {
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException before22) {
      return true;
    } catch (ReflectiveOperationException fault) {
      throw new IllegalStateException(fault);
    }
  }
}
