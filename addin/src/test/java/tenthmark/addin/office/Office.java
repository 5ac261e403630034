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
import com.sun.star.util.URL;
import com.sun.star.util.XURLTransformer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A running office with a throwaway profile, headless unless its launcher has a screen; closing it
 * ends all its processes.
 */
public final class Office implements AutoCloseable {

  private static final Duration START = Duration.ofMinutes(3);
  private static final Duration END = Duration.ofMinutes(1);
  private static final Duration POLL = Duration.ofMillis(20);

  private final UserFolder home;
  private final boolean ownsHome;
  private final Process process;
  private final Thread endWithTheTests = new Thread(this::kill);
  private final XComponentContext context;
  private final XDesktop desktop;

  private Office(UserFolder home, boolean ownsHome) throws Exception {
    this.home = home;
    this.ownsHome = ownsHome;
    int port = freePort();
    this.process =
        home.run(
            "soffice",
            log(),
            home.isOnScreen() ? "--nodefault" : "--headless",
            "--norestore",
            "--nologo",
            "--accept=socket,host=127.0.0.1,port=" + port + ";urp;");
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
    return new Office(UserFolder.create(launcher, profile), true);
  }

  /** Starts an office with a profile that stays when it is closed. */
  static Office startIn(UserFolder home) throws Exception {
    return new Office(home, false);
  }

  private Path log() {
    return home.path().resolve("office.log");
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
        Thread.sleep(POLL.toMillis());
      }
    }
    String output = Files.readString(log());
    String end = process.isAlive() ? "no answer" : "exit status " + process.exitValue();
    kill();
    throw new IllegalStateException(
        "the office did not start (" + end + "); " + UserFolder.NEEDED + ":\n" + output);
  }

  /** A service of the office. */
  public Object service(String name) throws com.sun.star.uno.Exception {
    return context.getServiceManager().createInstanceWithContext(name, context);
  }

  /** An address with its parts told apart, as commands are asked for. */
  public URL address(String complete) throws com.sun.star.uno.Exception {
    URL[] address = {new URL()};
    address[0].Complete = complete;
    queryInterface(XURLTransformer.class, service("com.sun.star.util.URLTransformer"))
        .parseStrict(address);
    return address[0];
  }

  /** What all its processes have used of the processors since the start. */
  public Duration processorTime() {
    return Stream.concat(Stream.of(process.toHandle()), process.descendants())
        .flatMap(member -> member.info().totalCpuDuration().stream())
        .reduce(Duration.ZERO, Duration::plus);
  }

  /** The one instance of something that the office has only once. */
  public Object singleton(String name) {
    return context.getValueByName("/singletons/" + name);
  }

  /** A folder that the tests and the office can both read and write. */
  public Path folder() {
    return home.path();
  }

  /** The addresses that it has handed to the system's browser, which a fake one keeps. */
  public List<String> opened() throws IOException {
    return FakeBrowser.in(home.path()).addresses();
  }

  /** An empty spreadsheet, in a hidden window if the office is headless. */
  public Workbook create() throws Exception {
    return load("private:factory/scalc", !home.isOnScreen());
  }

  /** An empty spreadsheet in a window that is shown, as a user has it, if on no screen. */
  public Workbook show() throws Exception {
    return load("private:factory/scalc", false);
  }

  /** A copy of a file, loaded as a user would open it; hidden likewise. */
  public Workbook open(Path file) throws Exception {
    return load(copy(file).toUri().toString(), !home.isOnScreen());
  }

  /** The same in the thread in which the office waits for a user, where File, Open loads it. */
  public Workbook openOnMainThread(Path file) throws Exception {
    return load(
        copy(file).toUri().toString(),
        property("Hidden", !home.isOnScreen()),
        property("OnMainThread", true));
  }

  private Path copy(Path file) throws IOException {
    Path copy = folder().resolve(file.getFileName());
    if (!copy.equals(file)) {
      Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
      Launcher.handOver(copy);
    }
    return copy;
  }

  private Workbook load(String url, boolean isHidden) throws Exception {
    return load(url, property("Hidden", isHidden));
  }

  private Workbook load(String url, PropertyValue... how) throws Exception {
    XComponent document =
        queryInterface(XComponentLoader.class, desktop).loadComponentFromURL(url, "_blank", 0, how);
    if (document == null) {
      throw new IllegalStateException("the office could not load " + url);
    }
    return new Workbook(this, queryInterface(XSpreadsheetDocument.class, document));
  }

  private static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
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
    if (ownsHome) {
      home.close();
    }
  }

  private void terminate() {
    try {
      desktop.terminate();
    } catch (DisposedException gone) {
      // It has ended already, which is what is wanted here.
    }
  }

  private void kill() {
    UserFolder.killTree(process);
  }
}
