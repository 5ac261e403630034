package tenthmark.addin.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A throwaway folder of a user with the profile of an office, which stays from one start of the
 * office to the next; closing it deletes it.
 */
public final class UserFolder implements AutoCloseable {

  static final String NEEDED =
      "these tests need LibreOffice Calc 7.4 or newer with Java (Debian: libreoffice-calc and"
          + " libreoffice-java-common)";

  private static final Duration INSTALLATION = Duration.ofMinutes(3);

  private final Launcher launcher;
  private final Path path;

  private UserFolder(Launcher launcher, Path path) {
    this.launcher = launcher;
    this.path = path;
  }

  /** A new folder; fails with the output of the office where an extension cannot be installed. */
  public static UserFolder create(Launcher launcher, Profile profile) throws Exception {
    UserFolder folder =
        new UserFolder(launcher, Files.createTempDirectory("tenthmark-office-").toRealPath());
    profile.write(folder.profile());
    FakeBrowser.in(folder.path).install();
    Launcher.handOver(folder.path);
    if (profile.extension().isPresent()) {
      folder.add(profile.extension().orElseThrow());
    }
    return folder;
  }

  boolean isOnScreen() {
    return launcher.screen().isPresent();
  }

  /** Where the profile is. */
  public Path profile() {
    return path.resolve("profile");
  }

  Path path() {
    return path;
  }

  /** Installs an extension, or upgrades it where an older version is installed. */
  public void add(Path extension) throws Exception {
    Path copy = path.resolve(extension.getFileName());
    Files.copy(extension, copy, StandardCopyOption.REPLACE_EXISTING);
    Launcher.handOver(copy);
    unopkg("add", "--suppress-license", copy.toString());
    Files.delete(copy);
  }

  /** Has the installer of extensions do something; its output, or a failure with it. */
  public String unopkg(String... arguments) throws Exception {
    Path log = path.resolve("unopkg.log");
    Process unopkg = run("unopkg", log, arguments);
    if (!unopkg.waitFor(INSTALLATION.toSeconds(), TimeUnit.SECONDS) || unopkg.exitValue() != 0) {
      killTree(unopkg);
      throw new IllegalStateException(
          "unopkg "
              + String.join(" ", arguments)
              + " failed; "
              + NEEDED
              + ":\n"
              + Files.readString(log));
    }
    return Files.readString(log);
  }

  /** Starts the office; closing it leaves the profile as it is then. */
  public Office start() throws Exception {
    return Office.startIn(this);
  }

  Process run(String program, Path log, String... arguments) {
    List<String> all = new ArrayList<>(List.of(arguments));
    // unopkg wants its command first
    all.add(Math.min(1, all.size()), "-env:UserInstallation=" + profile().toUri());
    try {
      return launcher
          .program(path, program, all.toArray(String[]::new))
          .redirectOutput(log.toFile())
          .start();
    } catch (IOException missing) {
      throw new IllegalStateException("the office cannot be run; " + NEEDED, missing);
    }
  }

  static void killTree(Process root) {
    List<ProcessHandle> family =
        Stream.concat(root.descendants(), Stream.of(root.toHandle())).toList();
    family.forEach(ProcessHandle::destroyForcibly);
    family.forEach(member -> member.onExit().join());
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> files = Files.walk(path)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
