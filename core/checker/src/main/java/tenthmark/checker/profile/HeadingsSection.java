package tenthmark.checker.profile;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.record.Field;

/** What the course's columns are called besides the words of the trade. */
final class HeadingsSection {

  private HeadingsSection() {}

  static Vocabulary read(Section section) {
    Map<Role, List<String>> words = new EnumMap<>(Role.class);
    Set<String> taken = new HashSet<>();
    for (Field field : Field.values()) {
      List<String> others = section.texts(field.word());
      for (String other : others) {
        if (!taken.add(other.toLowerCase(Locale.ROOT))) {
          section.valueProblem(field.word(), "the heading " + other + " stands here twice");
        }
        if (other.matches(".*[(\\[/].*")) {
          section.valueProblem(
              field.word(), "leave the unit out of the heading " + other + ": ( [ / begin a unit");
        }
      }
      words.put(field.role(), others);
    }
    section.close();
    return Vocabulary.STANDARD.with(words);
  }
}
