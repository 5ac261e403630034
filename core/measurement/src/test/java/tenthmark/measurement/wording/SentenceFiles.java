package tenthmark.measurement.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** The texts of each language as its file has them, without what it takes from English. */
public final class SentenceFiles {

  private SentenceFiles() {}

  /** What worksheet functions write. */
  public static Map<String, String> texts(Language language) {
    return texts(Sentences.class, "sentences", language);
  }

  /** The texts of any module, as {@link Sentences#of} finds them. */
  public static Map<String, String> texts(Class<?> owner, String name, Language language) {
    String suffix = language == Language.ENGLISH ? "" : "_" + language.code();
    String file = name + suffix + ".properties";
    try (InputStream stream = owner.getResourceAsStream(file)) {
      Properties properties = new Properties();
      properties.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
      Map<String, String> texts = new TreeMap<>();
      properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
      return texts;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
