package tenthmark.addin.office;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.PropertyValue;
import com.sun.star.bridge.UnoUrlResolver;
import com.sun.star.bridge.XUnoUrlResolver;
import com.sun.star.comp.helper.Bootstrap;
import com.sun.star.connection.NoConnectException;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XDesktop;
import com.sun.star.lang.DisposedException;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.XComponentContext;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A running headless office with a throwaway profile; closing it ends all its processes. */
public final class Office implements AutoCloseable {

  private static final Duration START = Duration.ofMinutes(3);
  private static final Duration END = Duration.ofSeconds(10);

  private static final String NEEDED =
      "these tests need LibreOffice Calc 7.4 or newer with Java (Debian: libreoffice-calc and"
          + " libreoffice-java-common)";

  private final Path home;
  private final Process process;
  private final Thread endWithTheTests = new Thread(this::kill);
  private final XComponentContext context;
  private final XDesktop desktop;

  private Office(Launcher launcher, Path home) throws Exception {
    this.home = home;
    int port = freePort();
    this.process =
        run(
            launcher
                .program(
                    home,
                    "soffice",
                    profileOption(home),
                    "--headless",
                    "--norestore",
                    "--nologo",
                    "--accept=socket,host=127.0.0.1,port=" + port + ";urp;")
                .redirectOutput(home.resolve("office.log").toFile()));
    Runtime.getRuntime().addShutdownHook(endWithTheTests);
    this.context = connect(port);
    this.desktop = queryInterface(XDesktop.class, service("com.sun.star.frame.Desktop"));
  }

  /** Starts the installed office. */
  public static Office start(Profile profile) throws Exception {
    return start(Launcher.installed(), profile);
  }

  /** Starts an office; fails with its output where it does not start. */
  public static Office start(Launcher launcher, Profile profile) throws Exception {
    Path home = Files.createTempDirectory("tenthmark-office-");
    profile.write(home.resolve("profile"));
    Path extension = home.resolve("tenthmark.oxt");
    if (profile.extension().isPresent()) {
      Files.copy(profile.extension().orElseThrow(), extension);
    }
    Launcher.handOver(home);
    if (profile.extension().isPresent()) {
      install(launcher, home, extension);
    }
    return new Office(launcher, home);
  }

  private static void install(Launcher launcher, Path home, Path extension) throws Exception {
    Path log = home.resolve("unopkg.log");
    Process unopkg =
        run(
            launcher
                .program(
                    home,
                    "unopkg",
                    "add",
                    "--suppress-license",
                    profileOption(home),
                    extension.toString())
                .redirectOutput(log.toFile()));
    if (!unopkg.waitFor(START.toSeconds(), TimeUnit.SECONDS) || unopkg.exitValue() != 0) {
      killTree(unopkg);
      throw new IllegalStateException(
          "the extension could not be installed; " + NEEDED + ":\n" + Files.readString(log));
    }
  }

  private static Process run(ProcessBuilder builder) {
    try {
      return builder.start();
    } catch (IOException missing) {
      throw new IllegalStateException("the office cannot be run; " + NEEDED, missing);
    }
  }

  private static String profileOption(Path home) {
    return "-env:UserInstallation=" + home.resolve("profile").toUri();
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private XComponentContext connect(int port) throws Exception {
    XUnoUrlResolver resolver = UnoUrlResolver.create(Bootstrap.createInitialComponentContext(null));
    String url = "uno:socket,host=127.0.0.1,port=" + port + ";urp;StarOffice.ComponentContext";
    Instant deadline = Instant.now().plus(START);
    while (process.isAlive() && Instant.now().isBefore(deadline)) {
      try {
        return queryInterface(XComponentContext.class, resolver.resolve(url));
      } catch (NoConnectException notYet) {
        Thread.sleep(100);
      }
    }
    String output = Files.readString(home.resolve("office.log"));
    String end = process.isAlive() ? "no answer" : "exit status " + process.exitValue();
    kill();
    throw new IllegalStateException(
        "the office did not start (" + end + "); " + NEEDED + ":\n" + output);
  }

  /** A service of the office. */
  public Object service(String name) throws com.sun.star.uno.Exception {
    return context.getServiceManager().createInstanceWithContext(name, context);
  }

  /** A folder that the tests and the office can both read and write. */
  public Path folder() {
    return home;
  }

  /** An empty spreadsheet. */
  public Workbook create() throws Exception {
    return load("private:factory/scalc");
  }

  /** A copy of a file, loaded as a user would open it. */
  public Workbook open(Path file) throws Exception {
    Path copy = home.resolve(file.getFileName());
    if (!copy.equals(file)) {
      Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
      Launcher.handOver(copy);
    }
    return load(copy.toUri().toString());
  }

  private Workbook load(String url) throws Exception {
    PropertyValue hidden = new PropertyValue();
    hidden.Name = "Hidden";
    hidden.Value = true;
    XComponent document =
        queryInterface(XComponentLoader.class, desktop)
            .loadComponentFromURL(url, "_blank", 0, new PropertyValue[] {hidden});
    if (document == null) {
      throw new IllegalStateException("the office could not load " + url);
    }
    return new Workbook(this, queryInterface(XSpreadsheetDocument.class, document));
  }

  @Override
  public void close() throws IOException {
    // An office that hangs does not answer; it is killed then.
    Thread terminate = new Thread(this::terminate);
    terminate.setDaemon(true);
    terminate.start();
    process.onExit().completeOnTimeout(process, END.toSeconds(), TimeUnit.SECONDS).join();
    kill();
    Runtime.getRuntime().removeShutdownHook(endWithTheTests);
    deleteAll(home);
  }

  private void terminate() {
    try {
      desktop.terminate();
    } catch (DisposedException gone) {
      // It has ended already, which is what is wanted here.
    }
  }

  private void kill() {
    killTree(process);
  }

  private static void killTree(Process root) {
    List<ProcessHandle> family =
        Stream.concat(root.descendants(), Stream.of(root.toHandle())).toList();
    family.forEach(ProcessHandle::destroyForcibly);
    family.forEach(member -> member.onExit().join());
  }

  private static void deleteAll(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
