package tenthmark.checker.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeadingWordsTest {

  private static final String[] SUFFIXES = {"", "_de", "_fr", "_es"};

  @ParameterizedTest
  @ValueSource(strings = {"", "_de", "_fr", "_es"})
  void areThereForEveryPartOfARecordInEveryLanguage(String suffix) throws IOException {
    Set<String> keys =
        Arrays.stream(Field.values())
            .map(field -> field.name().toLowerCase(Locale.ROOT).replace('_', '.'))
            .collect(Collectors.toSet());
    assertThat(words(suffix).stringPropertyNames()).isEqualTo(keys);
  }

  /** Else the language that is read last would decide. */
  @Test
  void nameOnePartEach() throws IOException {
    Map<String, String> parts = new HashMap<>();
    for (String suffix : SUFFIXES) {
      Properties words = words(suffix);
      for (String key : words.stringPropertyNames()) {
        for (String word : words.getProperty(key).split(", ", -1)) {
          String known = parts.putIfAbsent(HeadingWords.uniform(word.replace("''", "'")), key);
          assertThat(known == null || known.equals(key)).as(word + suffix).isTrue();
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Uncertainty, UNCERTAINTY",
    "Messgröße, QUANTITY",
    "Incertitude due à l'objet, PHYSICAL",
    "unité, UNIT",
    "Magnitud  medida:, QUANTITY"
  })
  void areKnownInAnyLetterCase(String heading, Field field) {
    assertThat(HeadingWords.STANDARD.named(heading)).contains(field);
  }

  private static Properties words(String suffix) throws IOException {
    Properties words = new Properties();
    try (Reader file =
        new InputStreamReader(
            Field.class.getResourceAsStream("headings" + suffix + ".properties"),
            StandardCharsets.UTF_8)) {
      words.load(file);
    }
    return words;
  }
}
