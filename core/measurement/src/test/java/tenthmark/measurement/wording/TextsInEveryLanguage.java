package tenthmark.measurement.wording;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.text.MessageFormat;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** What holds for the texts of every module. A module's test says which they are. */
public abstract class TextsInEveryLanguage {

  private static final Pattern GAP = Pattern.compile("\\{\\d+[^}]*}");
  private static final Pattern LOOSE_SIGN = Pattern.compile(" [:;?!»]|« ");
  private static final Pattern SINGLE_APOSTROPHE = Pattern.compile("(?<!')'(?!')");

  /** The texts of a language as its file has them. */
  protected abstract Map<String, String> texts(Language language);

  /** Keys of texts that are right as they are in English: signs, or one word in both languages. */
  protected abstract Set<String> likeEnglish(Language language);

  /** Whether the module's code says the text with this key. */
  protected abstract boolean isUsed(String key);

  /** Whether the English text with this key stands elsewhere than in the file of English. */
  protected boolean isDeclared(String key) {
    return false;
  }

  private Map<String, String> compared(Language language) {
    Map<String, String> texts = texts(language);
    texts.keySet().removeIf(this::isDeclared);
    return texts;
  }

  /** Every key that is missing in any file, in one failure; the other tests pass over them. */
  @Test
  void haveEveryText() {
    Set<String> english = compared(Language.ENGLISH).keySet();
    Map<Language, Set<String>> missing = new EnumMap<>(Language.class);
    Map<Language, Set<String>> without = new EnumMap<>(Language.class);
    for (Language language : Language.values()) {
      Set<String> own = compared(language).keySet();
      put(missing, language, difference(english, own));
      put(without, language, difference(own, english));
    }
    assertThat(missing).as("keys of English texts that other languages lack").isEmpty();
    assertThat(without).as("keys of texts that English lacks").isEmpty();
  }

  private static Set<String> difference(Set<String> some, Set<String> others) {
    return some.stream().filter(key -> !others.contains(key)).collect(toCollection(TreeSet::new));
  }

  private static void put(Map<Language, Set<String>> found, Language language, Set<String> keys) {
    if (!keys.isEmpty()) {
      found.put(language, keys);
    }
  }

  @ParameterizedTest
  @EnumSource
  void areNotBlank(Language language) {
    assertThat(texts(language).entrySet()).noneMatch(text -> text.getValue().isBlank());
  }

  @ParameterizedTest
  @EnumSource
  void leaveTheSameGaps(Language language) {
    Map<String, String> english = compared(Language.ENGLISH);
    compared(language)
        .forEach(
            (key, text) ->
                assertThat(gaps(text)).as(key).isEqualTo(gaps(english.getOrDefault(key, text))));
  }

  private static Set<String> gaps(String text) {
    return GAP.matcher(text).results().map(MatchResult::group).collect(toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void areTranslated(Language language) {
    Map<String, String> english = compared(Language.ENGLISH);
    Set<String> same =
        compared(language).entrySet().stream()
            .filter(text -> text.getValue().equals(english.get(text.getKey())))
            .map(Map.Entry::getKey)
            .collect(toCollection(TreeSet::new));
    assertThat(difference(same, likeEnglish(language)))
        .as("keys of texts in %s that are as in English", language)
        .isEmpty();
    assertThat(
            difference(likeEnglish(language), same).stream()
                .filter(compared(language)::containsKey))
        .as("keys of texts in %s that are not as in English", language)
        .isEmpty();
  }

  @Test
  void areAllUsed() {
    assertThat(compared(Language.ENGLISH).keySet().stream().filter(key -> !isUsed(key)))
        .as("keys of texts that nothing says")
        .isEmpty();
  }

  /** Else a line begins with a colon. */
  @Test
  void keepFrenchSignsBesideTheirWords() {
    assertThat(
            texts(Language.FRENCH).values().stream()
                .filter(text -> LOOSE_SIGN.matcher(text).find()))
        .isEmpty();
  }

  /** Else MessageFormat drops it and leaves the gaps after it open. */
  @ParameterizedTest
  @EnumSource
  void writeAnApostropheTwice(Language language) {
    texts(language)
        .forEach(
            (key, text) -> {
              assertThat(SINGLE_APOSTROPHE.matcher(text).find()).as(text).isFalse();
              assertThat(new MessageFormat(text, Locale.ROOT).format(new Object[0]))
                  .as(key)
                  .isNotBlank();
            });
  }
}
