package tenthmark.checker.submission;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Makes archives with the platform's own writer. */
public final class Zip {

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final ZipOutputStream zip = new ZipOutputStream(bytes);

  /** Adds a file. */
  public Zip with(String name, byte[] content) {
    try {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(content);
      zip.closeEntry();
      return this;
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Adds a file that holds a text. */
  public Zip with(String name, String text) {
    return with(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** The archive. */
  public byte[] bytes() {
    try {
      zip.close();
      return bytes.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Writes the archive. */
  public Path write(Path file) {
    try {
      return Files.write(file, bytes());
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
