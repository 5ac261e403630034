package tenthmark.measurement.explanation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tenthmark.measurement.wording.ErrorName;
import tenthmark.measurement.wording.Sentences;

/** An error that a cell can show, by the names that it has in Calc and in other programs. */
public enum ErrorKind {
  DIVISION("#DIV/0!"),
  NUMBER("#NUM!"),
  VALUE("#VALUE!"),
  REFERENCE("#REF!"),
  NAME("#NAME?"),
  MISSING("#N/A"),
  ARGUMENT("Err:502"),
  PARAMETER("Err:504"),
  CIRCLE("Err:522", "Err:523"),
  SYNTAX("Err:501", "Err:507", "Err:508", "Err:509", "Err:510", "Err:511", "Err:512", "Err:533"),
  WIDTH("###");

  private final List<String> names;

  ErrorKind(String... names) {
    this.names = List.of(names);
  }

  /** The error with this name. */
  public static Optional<ErrorKind> named(String name) {
    return Arrays.stream(values()).filter(kind -> kind.names.contains(name)).findFirst();
  }

  /** Its names in files and in an English office, most usual first. */
  public List<String> names() {
    return names;
  }

  /** What a cell shows, most usual first. */
  public List<String> shown(Sentences sentences) {
    return names.stream().map(name -> sentences.say(new ErrorName(name).shown())).toList();
  }

  /** What the error means. */
  public String meaning(Sentences sentences) {
    return sentences.say("error." + name() + ".meaning");
  }

  /** What to do about it. */
  public String fix(Sentences sentences) {
    return sentences.say("error." + name() + ".fix");
  }
}
