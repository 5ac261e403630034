package tenthmark.checker.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/** A file that is written as a whole, so that a reader never sees half of it. */
final class WholeFile {

  private WholeFile() {}

  static void write(Path file, String text) throws IOException {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  static void write(Path file, byte[] content) throws IOException {
    Files.createDirectories(file.getParent());
    // A name of its own for each, and short, however long that of the file is.
    Path unfinished = file.resolveSibling(".part-" + UUID.randomUUID());
    try {
      Files.write(unfinished, content);
      Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }
}
