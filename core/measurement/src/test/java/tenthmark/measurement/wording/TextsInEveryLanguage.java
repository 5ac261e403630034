package tenthmark.measurement.wording;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.text.MessageFormat;
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

  @ParameterizedTest
  @EnumSource
  void haveEveryText(Language language) {
    assertThat(compared(language).keySet()).isEqualTo(compared(Language.ENGLISH).keySet());
    assertThat(texts(language).values()).allSatisfy(text -> assertThat(text).isNotBlank());
  }

  @ParameterizedTest
  @EnumSource
  void leaveTheSameGaps(Language language) {
    Map<String, String> english = compared(Language.ENGLISH);
    compared(language)
        .forEach((key, text) -> assertThat(gaps(text)).as(key).isEqualTo(gaps(english.get(key))));
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
    assertThat(same).isEqualTo(new TreeSet<>(likeEnglish(language)));
  }

  @Test
  void areAllUsed() {
    assertThat(compared(Language.ENGLISH).keySet()).allMatch(this::isUsed);
  }

  /** Else a line begins with a colon. */
  @Test
  void keepFrenchSignsBesideTheirWords() {
    assertThat(texts(Language.FRENCH).values())
        .allSatisfy(text -> assertThat(text).doesNotContainPattern(" [:;?!»]|« "));
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
