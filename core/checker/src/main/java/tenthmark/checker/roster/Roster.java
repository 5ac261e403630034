package tenthmark.checker.roster;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.submission.Label;

/**
 * The students of a course.
 *
 * @param students in the order of the list
 */
public record Roster(List<Student> students) {

  /** Copies the list. */
  public Roster {
    students = List.copyOf(students);
  }

  /**
   * Reads a table with a row for each student.
   *
   * @throws IOException if it is none; its message says why in a line
   */
  public static Roster read(Path file, RosterColumns columns) throws IOException {
    CsvTable table = CsvTable.read(file);
    requireColumns(table, columns);
    List<Student> students = new ArrayList<>();
    Map<String, Long> rows = new LinkedHashMap<>();
    for (CsvTable.Row row : table.rows()) {
      Student student =
          new Student(
              joined(row, columns.id()),
              joined(row, columns.name()),
              joined(row, columns.section()));
      if (student.id().isEmpty() && student.name().isEmpty()) {
        continue;
      }
      Long earlier = student.id().isEmpty() ? null : rows.put(key(student.id()), row.line());
      if (earlier != null) {
        throw new IOException(
            "the id " + student.id() + " stands in the rows " + earlier + " and " + row.line());
      }
      students.add(student);
    }
    if (students.isEmpty()) {
      throw new IOException("there is no student in it");
    }
    return new Roster(students);
  }

  private static void requireColumns(CsvTable table, RosterColumns columns) throws IOException {
    List<String> missing =
        Stream.of(columns.id(), columns.name(), columns.section())
            .filter(headings -> !RosterColumns.STANDARD.all().contains(headings))
            .flatMap(List::stream)
            .filter(heading -> table.heading(heading).isEmpty())
            .toList();
    boolean nobody =
        Stream.of(columns.id(), columns.name())
            .flatMap(List::stream)
            .allMatch(heading -> table.heading(heading).isEmpty());
    if (!missing.isEmpty() || nobody) {
      List<String> sought = missing.isEmpty() ? columns.id() : missing;
      throw new IOException(
          "there is no column "
              + String.join(", ", sought)
              + " (name the columns under \"roster\" in the profile); its columns are "
              + String.join(", ", table.headings()));
    }
  }

  private static String joined(CsvTable.Row row, List<String> headings) {
    return headings.stream()
        .map(row::value)
        .filter(value -> !value.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private static String key(String id) {
    return id.toLowerCase(Locale.ROOT);
  }

  /** The student whom a label names: by the id, else by a name that no other student has. */
  public Optional<Student> student(Label label) {
    return label.id().flatMap(this::withId).or(() -> label.name().flatMap(this::withName));
  }

  /** The student with an id, in whatever letter case. */
  public Optional<Student> withId(String id) {
    return students.stream()
        .filter(student -> !student.id().isEmpty() && key(student.id()).equals(key(id)))
        .findFirst();
  }

  private Optional<Student> withName(String name) {
    PersonName sought = PersonName.of(name);
    List<Student> found =
        students.stream().filter(student -> PersonName.of(student.name()).agrees(sought)).toList();
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }
}
