package tenthmark.measurement.recording;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** Where a contribution to an uncertainty comes from. */
public enum ContributionKind {
  /** Judging a position on a scale. */
  READING,
  /** The object itself: a soft edge, a part that is not round. */
  PHYSICAL,
  /** The instrument, as its maker specifies it. */
  INSTRUMENT,
  /** The scatter of repeated readings. */
  REPEAT,
  /** Starting and stopping a watch by hand. */
  TIMING;

  private static final Pattern ACCENT = Pattern.compile("\\p{M}");

  private static final Map<String, ContributionKind> BY_WORD =
      Arrays.stream(values())
          .flatMap(kind -> kind.inEveryLanguage().map(word -> Map.entry(uniform(word), kind)))
          .distinct()
          .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));

  /** The kind that a word names, in any language and letter case, with or without accents. */
  public static Optional<ContributionKind> named(String word) {
    return Optional.ofNullable(BY_WORD.get(uniform(word)));
  }

  /** The word for it. */
  public String word(Sentences sentences) {
    return sentences.say(key());
  }

  /** The words of all kinds, separated by commas. */
  public static Message allInWords() {
    return Arrays.stream(values())
        .map(kind -> Message.of(kind.key()))
        .reduce((all, next) -> Message.of("rationale.list.next", all, next))
        .orElseThrow();
  }

  private Stream<String> inEveryLanguage() {
    return Sentences.inEveryLanguage(key()).stream();
  }

  private String key() {
    return "kind." + name().toLowerCase(Locale.ROOT);
  }

  private static String uniform(String word) {
    String decomposed = Normalizer.normalize(word.strip(), Normalizer.Form.NFD);
    return ACCENT.matcher(decomposed).replaceAll("").toLowerCase(Locale.ROOT);
  }
}
