package tenthmark.checker.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.SentenceFiles;

class HeadingWordsTest {

  @ParameterizedTest
  @EnumSource
  void areThereForEveryPartOfARecordInEveryLanguage(Language language) {
    Set<String> keys =
        Arrays.stream(Field.values())
            .map(field -> field.name().toLowerCase(Locale.ROOT).replace('_', '.'))
            .collect(Collectors.toSet());
    assertThat(words(language).keySet()).isEqualTo(keys);
  }

  /** Else the language that is read last would decide. */
  @Test
  void nameOnePartEach() {
    Map<String, String> parts = new HashMap<>();
    for (Language language : Language.values()) {
      words(language)
          .forEach(
              (key, words) -> {
                for (String word : words.split(", ", -1)) {
                  String uniform = HeadingWords.uniform(word.replace("''", "'"));
                  String known = parts.putIfAbsent(uniform, key);
                  assertThat(known == null || known.equals(key)).as(word + language).isTrue();
                }
              });
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

  private static Map<String, String> words(Language language) {
    return SentenceFiles.texts(Field.class, "headings", language);
  }
}
