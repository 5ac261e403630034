package tenthmark.checker.roster;

/**
 * A student of the course. What is not known is empty.
 *
 * @param id by which the course's lists name the student
 * @param name as it is written there
 * @param section of the course
 */
public record Student(String id, String name, String section) {

  /** How a report calls the student. */
  public String shown() {
    if (name.isEmpty()) {
      return id;
    }
    return id.isEmpty() ? name : name + " (" + id + ")";
  }
}
