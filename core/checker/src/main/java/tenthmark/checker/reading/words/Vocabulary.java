package tenthmark.checker.reading.words;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/**
 * Every word that the checker reads. The words of all languages are read at once, each from {@code
 * vocabulary.properties} and the files beside it, and a course adds its own headings. A word that
 * stands for several roles is told by what stands beneath it.
 */
public final class Vocabulary {

  /** The words of the trade. */
  public static final Vocabulary STANDARD = standard();

  private static final int MOST_MEANINGS = 3;

  private final Map<String, Set<Role>> roles;
  private final Map<String, Qualifier> qualifiers;
  private final Map<Notion, Pattern> notions;
  private final Map<Notion, Set<String>> notionWords;
  private final int longest;

  private Vocabulary(
      Map<String, Set<Role>> roles,
      Map<String, Qualifier> qualifiers,
      Map<Notion, Pattern> notions,
      Map<Notion, Set<String>> notionWords) {
    this.roles = roles;
    this.qualifiers = qualifiers;
    this.notions = notions;
    this.notionWords = notionWords;
    this.longest =
        Math.max(
            roles.keySet().stream().mapToInt(Vocabulary::length).max().orElse(1),
            qualifiers.keySet().stream().mapToInt(Vocabulary::length).max().orElse(1));
  }

  private static Vocabulary standard() {
    Map<String, Set<Role>> roles = new HashMap<>();
    Map<String, Qualifier> qualifiers = new HashMap<>();
    Map<Notion, Pattern> patterns = new EnumMap<>(Notion.class);
    Map<Notion, Set<String>> words = new EnumMap<>(Notion.class);
    for (Role role : Role.values()) {
      everywhere(role.key())
          .forEach(
              word ->
                  roles
                      .computeIfAbsent(Phrase.uniform(word), key -> EnumSet.noneOf(Role.class))
                      .add(role));
    }
    for (Qualifier qualifier : Qualifier.values()) {
      everywhere(qualifier.key()).forEach(word -> qualifiers.put(Phrase.uniform(word), qualifier));
    }
    for (Notion notion : Notion.values()) {
      List<String> all = everywhere(notion.key()).stream().map(Phrase::uniform).toList();
      words.put(notion, Set.copyOf(all));
      patterns.put(notion, pattern(all));
    }
    return new Vocabulary(roles, qualifiers, patterns, words);
  }

  private static List<String> everywhere(String key) {
    List<String> all = new ArrayList<>();
    for (Language language : Language.values()) {
      all.addAll(words(key, language));
    }
    return all;
  }

  private static List<String> words(String key, Language language) {
    Sentences sentences = Sentences.of(Vocabulary.class, "vocabulary", language, DecimalSign.POINT);
    return List.of(sentences.say(key).split(",\\s*", -1));
  }

  /** A star stands for any letters, so that it joins the forms of one word. */
  private static Pattern pattern(List<String> words) {
    return Pattern.compile(
        words.stream()
            .map(word -> Pattern.quote(word).replace("*", "\\E[\\p{L}]*\\Q"))
            .collect(Collectors.joining("|", "(?<![\\p{L}\\p{N}])(?:", ")(?![\\p{L}\\p{N}])")));
  }

  private static int length(String phrase) {
    return phrase.split(" ", -1).length;
  }

  /** These words and others, which stand for their roles alone. */
  public Vocabulary with(Map<Role, List<String>> others) {
    Map<String, Set<Role>> all = new HashMap<>(roles);
    others.forEach(
        (role, words) -> words.forEach(word -> all.put(Phrase.uniform(word), EnumSet.of(role))));
    return new Vocabulary(all, qualifiers, notions, notionWords);
  }

  /** The English word, by which a profile names a role. */
  public static String word(Role role) {
    return words(role.key(), Language.ENGLISH).get(0);
  }

  /** The roles that words can stand for, whatever their case; none for other words. */
  public Set<Role> roles(String words) {
    return Collections.unmodifiableSet(roles.getOrDefault(Phrase.uniform(words), Set.of()));
  }

  /** Whether a text mentions something. */
  public boolean mentions(Notion notion, String text) {
    return notions.get(notion).matcher(Phrase.uniform(text)).find();
  }

  /** Whether a text is one of the words for something and nothing else. */
  public boolean says(Notion notion, String text) {
    return notionWords.get(notion).contains(Phrase.uniform(text));
  }

  /** What uniform words qualify, if they do. */
  Qualifier qualifier(String words) {
    return qualifiers.get(words);
  }

  /** The roles of uniform words. */
  Set<Role> rolesOf(String words) {
    return roles.getOrDefault(words, Set.of());
  }

  /** The roles of the words that begin so; none if they are too many to mean anything. */
  Set<Role> rolesOfAbbreviation(String start) {
    String uniform = Phrase.uniform(start);
    Set<Role> all = EnumSet.noneOf(Role.class);
    roles.forEach(
        (word, found) -> {
          if (word.startsWith(uniform) && word.indexOf(' ') < 0) {
            all.addAll(found);
          }
        });
    return all.size() > MOST_MEANINGS ? Set.of() : all;
  }

  /** The most words in one phrase. */
  int longest() {
    return longest;
  }

  /** The words for something, in every language. */
  public Set<String> of(Notion notion) {
    return notionWords.get(notion);
  }

  /** The words of a role, in every language. */
  public Set<String> of(Role role) {
    return roles.entrySet().stream()
        .filter(word -> word.getValue().contains(role))
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }
}
