package tenthmark.measurement.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
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
      Objects.requireNonNull(stream, () -> file + " is missing in " + owner.getPackageName());
      Once lines = new Once();
      lines.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
      Map<String, String> texts = new TreeMap<>();
      lines.stringPropertyNames().forEach(key -> texts.put(key, lines.getProperty(key)));
      return texts;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Of two lines with one key the later would count without a word. */
  private static final class Once extends Properties {

    private static final long serialVersionUID = 1L;

    @Override
    public synchronized Object put(Object key, Object text) {
      if (containsKey(key)) {
        throw new IllegalStateException("twice in one file: " + key);
      }
      return super.put(key, text);
    }
  }
}
