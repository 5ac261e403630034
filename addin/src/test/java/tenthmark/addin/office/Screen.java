package tenthmark.addin.office;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A screen that nobody sees, with a keyboard. A window manager runs on it, as on a user's: without
 * one, the keys that are pressed do not go to the window that was opened last.
 */
public final class Screen implements AutoCloseable {

  private static final String NEEDED =
      "these tests need an X server, a window manager and something that presses keys (Debian:"
          + " xvfb, openbox and xdotool)";

  private final Process server;
  private final String display;
  private final Thread endWithTheTests = new Thread(this::end);

  private Screen() throws Exception {
    // Refused where the tests are being ended already, and no server starts then.
    Runtime.getRuntime().addShutdownHook(endWithTheTests);
    // Without -noreset it drops whoever comes while the last client before goes.
    this.server =
        start(
            new ProcessBuilder(
                "Xvfb", "-displayfd", "1", "-noreset", "-screen", "0", "1366x768x24"));
    this.display = ":" + free(server.inputReader());
    start(on("openbox", "--config-file", "/etc/xdg/openbox/rc.xml"));
    Patience.until("the window manager", () -> output(on("xdotool", "get_desktop")).isPresent());
  }

  /** Starts one that is free; it ends with the tests at the latest. */
  public static Screen start() throws Exception {
    return new Screen();
  }

  private static Process start(ProcessBuilder program) {
    try {
      return program.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    } catch (IOException missing) {
      throw new IllegalStateException(NEEDED, missing);
    }
  }

  /** The number that the server gives itself once it can be used. */
  private static String free(BufferedReader said) throws IOException {
    String number = said.readLine();
    if (number == null) {
      throw new IllegalStateException("the X server did not start; " + NEEDED);
    }
    return number;
  }

  private ProcessBuilder on(String program, String... arguments) {
    List<String> line = new ArrayList<>(List.of(program));
    line.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(line);
    builder.environment().put("DISPLAY", display);
    return builder;
  }

  /** What makes an office show its windows there, the same ones whatever desktop is installed. */
  Map<String, String> environment() {
    return Map.of("DISPLAY", display, "SAL_USE_VCLPLUGIN", "gen");
  }

  /** Presses keys one after the other, such as {@code alt+m}, {@code Tab} or {@code F1}. */
  public void press(String... keys) throws Exception {
    List<String> line = new ArrayList<>(List.of("key"));
    line.addAll(List.of(keys));
    if (output(on("xdotool", line.toArray(String[]::new))).isEmpty()) {
      throw new IllegalStateException("no such keys: " + List.of(keys));
    }
  }

  /** Waits until the keys that are pressed go to a window whose title begins like this. */
  public void awaitKeyboardIn(String title) throws Exception {
    Patience.until("the keyboard in the window " + title, () -> active().startsWith(title));
  }

  private String active() throws Exception {
    return output(on("xdotool", "getactivewindow", "getwindowname")).orElse("");
  }

  /** Waits until no window has a title. */
  public void awaitEnd(String title) throws Exception {
    Patience.until(
        "the end of the window " + title,
        () ->
            output(on("xdotool", "search", "--onlyvisible", "--name", "^" + title + "$"))
                .isEmpty());
  }

  /** What a program says; nothing if it fails. */
  private static Optional<String> output(ProcessBuilder program) throws Exception {
    Process process = start(program);
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int ended = process.waitFor();
    return Optional.of(said).filter(any -> ended == 0);
  }

  @Override
  public void close() {
    end();
    Runtime.getRuntime().removeShutdownHook(endWithTheTests);
  }

  /** Asks the server to end, so that it clears its lock away; the window manager ends with it. */
  private void end() {
    if (server != null) {
      server.destroy();
      server.onExit().join();
    }
  }
}
