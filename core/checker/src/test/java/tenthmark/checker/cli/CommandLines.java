package tenthmark.checker.cli;

import java.io.PrintWriter;
import java.util.Arrays;

/** Runs the command line within a test of another package. */
public final class CommandLines {

  private CommandLines() {}

  /** The exit status of a command. */
  public static int run(PrintWriter said, Object... arguments) {
    return Main.commandLine(said, said)
        .execute(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
  }
}
