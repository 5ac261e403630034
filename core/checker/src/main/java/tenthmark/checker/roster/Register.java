package tenthmark.checker.roster;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Who handed in what: everybody on the roster, then those who are not on it. Without a roster
 * everybody whom the paths name, and each workbook whose path names nobody for itself. A stray
 * whose path names nobody is nobody's.
 *
 * @param participants in the order of the roster, then of the files
 * @param senders who handed in each file
 */
public record Register(List<Participant> participants, Map<Path, Participant> senders) {

  /** Of files of which nothing tells who handed them in. */
  public static final Register NONE = new Register(List.of());

  /** Copies the lists. */
  public Register {
    participants = List.copyOf(participants);
    senders = Map.copyOf(senders);
  }

  private Register(List<Participant> participants) {
    this(participants, senders(participants));
  }

  private static Map<Path, Participant> senders(List<Participant> participants) {
    Map<Path, Participant> senders = new HashMap<>();
    for (Participant one : participants) {
      Stream.concat(one.attempts().stream(), one.strays().stream())
          .forEach(attempt -> senders.put(attempt.file(), one));
    }
    return senders;
  }

  /**
   * Sets files against a roster.
   *
   * @param workbooks all that were handed in, in their order
   * @param strays other files, in their order
   */
  public static Register of(
      Optional<Roster> roster, List<Attempt> workbooks, List<Attempt> strays) {
    Map<Student, List<Attempt>> byStudent = new LinkedHashMap<>();
    roster.ifPresent(
        list -> list.students().forEach(student -> byStudent.put(student, new ArrayList<>())));
    int listed = byStudent.size();
    Map<Student, List<Attempt>> strayed = new HashMap<>();
    Function<Attempt, Student> student = students(roster);
    workbooks.forEach(file -> add(byStudent, student.apply(file), file));
    for (Attempt stray : strays.stream().filter(Register::isNamed).toList()) {
      Student sender = student.apply(stray);
      byStudent.putIfAbsent(sender, new ArrayList<>());
      add(strayed, sender, stray);
    }
    List<Participant> participants = new ArrayList<>();
    byStudent.forEach(
        (sender, files) ->
            participants.add(
                new Participant(
                    sender,
                    roster.isEmpty() || participants.size() < listed,
                    files,
                    strayed.getOrDefault(sender, List.of()))));
    return new Register(participants);
  }

  private static boolean isNamed(Attempt file) {
    return file.label().id().isPresent() || file.label().name().isPresent();
  }

  private static void add(Map<Student, List<Attempt>> files, Student student, Attempt file) {
    files.computeIfAbsent(student, none -> new ArrayList<>()).add(file);
  }

  /** Without an id or a name on the roster two files are one student's if both name the same. */
  private static Function<Attempt, Student> students(Optional<Roster> roster) {
    Map<String, Student> unlisted = new HashMap<>();
    return file ->
        roster
            .flatMap(list -> list.student(file.label()))
            .orElseGet(() -> unlisted.computeIfAbsent(key(file), none -> unlisted(file)));
  }

  private static String key(Attempt file) {
    return file.label()
        .id()
        .or(() -> file.label().name())
        .map(text -> text.toLowerCase(Locale.ROOT))
        .orElse(file.file().toString());
  }

  private static Student unlisted(Attempt file) {
    String id = file.label().id().orElse("");
    String name = file.label().name().orElse("");
    return new Student(
        id,
        id.isEmpty() && name.isEmpty() ? file.file().toString() : name,
        file.label().section().orElse(""));
  }

  /** Whether the same student handed in two files. */
  public boolean sameSender(Path one, Path other) {
    return sender(one).isPresent() && sender(one).equals(sender(other));
  }

  /** Whether a workbook is an attempt that a later one takes the place of. */
  public boolean isSuperseded(Path file) {
    return sender(file)
        .flatMap(Participant::newest)
        .filter(newest -> !newest.file().equals(file))
        .isPresent();
  }

  /** The one who handed in a file. */
  public Optional<Participant> sender(Path file) {
    return Optional.ofNullable(senders.get(file));
  }

  /** Those on the roster who handed in no workbook. */
  public List<Participant> absent() {
    return participants.stream().filter(one -> one.listed() && one.attempts().isEmpty()).toList();
  }
}
