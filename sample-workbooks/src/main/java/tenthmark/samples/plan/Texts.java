package tenthmark.samples.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts that are kept beside a class. */
public final class Texts {

  private Texts() {}

  /** The whole text of a file. */
  public static String read(Class<?> beside, String name) {
    try (InputStream file = beside.getResourceAsStream(name)) {
      if (file == null) {
        throw new IllegalArgumentException("no file " + name + " beside " + beside);
      }
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
