package tenthmark.addin.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How an office program is run: a command that takes the program's name ({@code soffice} or {@code
 * unopkg}) and its arguments. The office's own installer refuses root, so root runs both as nobody.
 *
 * @param command what stands before the program's name; may be empty
 * @param screen where it shows its windows; nowhere if it is headless
 */
public record Launcher(List<String> command, Optional<Screen> screen) {

  private static final String UNPRIVILEGED = "nobody";

  /** A headless office. */
  public Launcher(List<String> command) {
    this(command, Optional.empty());
  }

  /** The office on the path, or the one that {@code TENTHMARK_OFFICE} runs. */
  public static Launcher installed() {
    return named("TENTHMARK_OFFICE")
        .orElseGet(
            () ->
                new Launcher(
                    isRoot()
                        ? List.of("setpriv", "--reuid=nobody", "--regid=nogroup", "--clear-groups")
                        : List.of()));
  }

  /** The other office, if {@code TENTHMARK_SECOND_OFFICE} runs one. */
  public static Optional<Launcher> second() {
    return named("TENTHMARK_SECOND_OFFICE");
  }

  /** The same office with its windows on a screen. */
  public Launcher on(Screen shown) {
    return new Launcher(command, Optional.of(shown));
  }

  private static Optional<Launcher> named(String variable) {
    return Optional.ofNullable(System.getenv(variable))
        .filter(command -> !command.isBlank())
        .map(command -> new Launcher(List.of(command)));
  }

  /** A process of one of the office's programs with {@code home} as its home folder. */
  ProcessBuilder program(Path home, String name, String... arguments) {
    List<String> line = new ArrayList<>(command);
    line.add(name);
    line.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
    Map<String, String> environment = builder.environment();
    environment.put("HOME", home.toString());
    environment.put("PATH", FakeBrowser.in(home).folder() + ":" + environment.get("PATH"));
    environment.remove("DISPLAY");
    screen.ifPresent(shown -> environment.putAll(shown.environment()));
    return builder;
  }

  /** Gives a folder and all in it to the account that runs the office. */
  static void handOver(Path folder) throws IOException {
    if (!isRoot()) {
      return;
    }
    UserPrincipal user =
        folder.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName(UNPRIVILEGED);
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        Files.setOwner(file, user);
      }
    }
  }

  private static boolean isRoot() {
    return "root".equals(System.getProperty("user.name"));
  }
}
