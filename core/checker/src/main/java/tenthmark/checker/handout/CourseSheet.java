package tenthmark.checker.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorkbookConvention;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/**
 * The sheet of a handed-out workbook that holds what the course goes by: its convention, which the
 * functions follow, and below it the profile, by which the workbook is checked before it is handed
 * in.
 *
 * @param convention in each row a word, its value and what it means
 * @param profile the lines of the profile
 */
public record CourseSheet(List<List<Value>> convention, List<String> profile) {

  /** Columns of the convention. */
  static final int WIDTH = 3;

  private static final String NAME = "Course";

  /** What the words of a convention mean, by key. */
  private static final Map<String, String> MEANINGS =
      Map.of(
          "convention", "handout.convention",
          "wide", "handout.wide",
          "fine", "handout.fine",
          "combine", "handout.combine",
          "digits", "handout.digits",
          "reaction", "handout.reaction",
          "coverage", "handout.coverage");

  /** Copies the lists. */
  public CourseSheet {
    convention = List.copyOf(convention);
    profile = List.copyOf(profile);
  }

  /**
   * The sheet of a course.
   *
   * @param profile in YAML
   * @param texts in the language of the course
   */
  public static CourseSheet of(Convention convention, String profile, Sentences texts) {
    List<List<Value>> rows = new ArrayList<>();
    for (List<Value> row : WorkbookConvention.rows(convention)) {
      String word = ((Value.Text) row.get(0)).text();
      String meaning = texts.say(Message.of(MEANINGS.get(word)));
      rows.add(List.of(row.get(0), row.get(1), Value.of(meaning)));
    }
    List<String> lines = new ArrayList<>();
    lines.add("# " + texts.say(Message.of("handout.profile")));
    profile.lines().forEach(lines::add);
    return new CourseSheet(rows, lines);
  }

  /** The number of the profile's first row, counted from 0. */
  int profileTop() {
    return convention.size() + 1;
  }

  /** The number of the profile's last row, counted from 0. */
  int profileBottom() {
    return profileTop() + profile.size() - 1;
  }

  /** A name that no sheet of the workbook has. */
  static String name(List<String> taken) {
    List<String> uniform = taken.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    String name = NAME;
    for (int number = 2; uniform.contains(name.toLowerCase(Locale.ROOT)); number++) {
      name = NAME + " " + number;
    }
    return name;
  }
}
