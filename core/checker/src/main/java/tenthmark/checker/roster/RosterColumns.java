package tenthmark.checker.roster;

import java.util.List;

/**
 * The headings of a roster's columns. A part that stands in several columns is joined in their
 * order.
 *
 * @param id of the student
 * @param name of the student
 * @param section of the course; may be empty
 */
public record RosterColumns(List<String> id, List<String> name, List<String> section) {

  /** What the columns are called where a profile does not say. */
  public static final RosterColumns STANDARD =
      new RosterColumns(List.of("id"), List.of("name"), List.of("section"));

  /** What all parts are called. */
  List<List<String>> all() {
    return List.of(id, name, section);
  }

  /** Copies the headings. */
  public RosterColumns {
    id = List.copyOf(id);
    name = List.copyOf(name);
    section = List.copyOf(section);
  }
}
