package tenthmark.checker.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file that is written as a whole, so that a reader never sees half of it. */
final class WholeFile {

  private WholeFile() {}

  static void write(Path file, String text) throws IOException {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  static void write(Path file, byte[] content) throws IOException {
    Files.createDirectories(file.getParent());
    // No longer than any name that the folder can have.
    Path unfinished = file.resolveSibling(".part");
    try {
      Files.write(unfinished, content);
      Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }
}
