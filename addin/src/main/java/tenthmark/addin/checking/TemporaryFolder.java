package tenthmark.addin.checking;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A folder that only this user can read, and that is gone with all in it when it is closed. */
record TemporaryFolder(Path path) implements AutoCloseable {

  static TemporaryFolder create() throws IOException {
    return new TemporaryFolder(Files.createTempDirectory("tenthmark-check-"));
  }

  Path file(String name) {
    return path.resolve(name);
  }

  @Override
  public void close() throws IOException {
    if (!Files.exists(path)) {
      return;
    }
    try (Stream<Path> files = Files.walk(path)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
