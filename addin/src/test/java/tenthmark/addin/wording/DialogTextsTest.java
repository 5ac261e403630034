package tenthmark.addin.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.addin.OfficeLocale;
import tenthmark.addin.menu.Commands;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;

class DialogTextsTest {

  private static final Pattern GAP = Pattern.compile("\\{(\\d)[^}]*}");

  @ParameterizedTest
  @ValueSource(strings = {"_de", "_fr", "_es"})
  void areCompleteInEveryLanguage(String language) throws IOException {
    assertThat(texts(language).keySet()).isEqualTo(texts("").keySet());
  }

  @ParameterizedTest
  @ValueSource(strings = {"_de", "_fr", "_es"})
  void haveTheSameGapsInEveryLanguage(String language) throws IOException {
    Properties own = texts(language);
    texts("")
        .forEach(
            (key, text) ->
                assertThat(gaps(own.getProperty((String) key)))
                    .as(key + language)
                    .isEqualTo(gaps((String) text)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "_de", "_fr", "_es"})
  void writeEachApostropheTwice(String language) throws IOException {
    texts(language)
        .forEach(
            (key, text) -> {
              if (!((String) key).startsWith("menu.")) {
                assertThat(((String) text).replace("''", ""))
                    .as(key + language)
                    .doesNotContain("'");
              }
            });
  }

  @Test
  void nameEveryCommand() throws IOException {
    assertThat(texts("").keySet())
        .containsAll(
            Commands.load().all().stream().map(command -> "menu." + command.name()).toList());
  }

  @Test
  void areInTheLanguageOfTheOffice() {
    OfficeLocale german = new OfficeLocale(Language.GERMAN, DecimalSign.COMMA);
    assertThat(DialogTexts.in(german).say("menu.reference")).isEqualTo("Funktionsverzeichnis");
  }

  private static List<String> gaps(String text) {
    return GAP.matcher(text).results().map(MatchResult::group).sorted().toList();
  }

  private static Properties texts(String language) throws IOException {
    Properties properties = new Properties();
    try (Reader reader =
        new InputStreamReader(
            DialogTexts.class.getResourceAsStream("dialogs" + language + ".properties"),
            StandardCharsets.UTF_8)) {
      properties.load(reader);
    }
    return properties;
  }
}
