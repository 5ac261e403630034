package tenthmark.measurement.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tenthmark.measurement.wording.Message;

/**
 * One parameter of a worksheet function. Its name is one lower-case word, as the function wizard
 * and the error sentences show it.
 *
 * @param <T> the type that the function works with
 */
public final class Parameter<T> {

  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*");

  private static final Value ZERO = Value.of(0);

  private final String name;
  private final String description;
  private final Kind<T> kind;
  private final Optional<T> fallback;
  private final Need need;
  private final boolean repeated;

  private enum Need {
    GIVEN,
    PLACE_KEPT,
    LEFT_OUT
  }

  private Parameter(
      String name,
      String description,
      Kind<T> kind,
      Optional<T> fallback,
      Need need,
      boolean repeated) {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("not a parameter name: " + name);
    }
    this.name = name;
    this.description = description;
    this.kind = kind;
    this.fallback = fallback;
    this.need = need;
    this.repeated = repeated;
  }

  /** A parameter that must be given. */
  public static <T> Parameter<T> required(String name, String description, Kind<T> kind) {
    return new Parameter<>(name, description, kind, Optional.empty(), Need.GIVEN, false);
  }

  /** A parameter that may be left out or blank, with the value it then has. */
  public static <T> Parameter<T> optional(
      String name, String description, Kind<T> kind, T fallback) {
    return new Parameter<>(name, description, kind, Optional.of(fallback), Need.LEFT_OUT, false);
  }

  /** A parameter that may be left out or blank and then has no value. */
  public static <T> Parameter<T> optional(String name, String description, Kind<T> kind) {
    return new Parameter<>(name, description, kind, Optional.empty(), Need.LEFT_OUT, false);
  }

  /**
   * A parameter before required ones that may be blank and then has no value; its place is kept
   * between two semicolons.
   */
  public static <T> Parameter<T> blankable(String name, String description, Kind<T> kind) {
    return new Parameter<>(name, description, kind, Optional.empty(), Need.PLACE_KEPT, false);
  }

  /** A last parameter that must be given once and may be given any number of times. */
  public static <T> Parameter<T> repeated(String name, String description, Kind<T> kind) {
    return new Parameter<>(name, description, kind, Optional.empty(), Need.GIVEN, true);
  }

  /** One lower-case word. */
  public String name() {
    return name;
  }

  /** What it is, in one sentence, with the default if there is one. */
  public String description() {
    return description;
  }

  /** What is allowed, in words that follow "it must be". */
  public Message allowed() {
    return kind.allowed();
  }

  /** How the argument reaches the function. */
  public Kind.Form form() {
    return kind.form();
  }

  /** Whether it may be left out, its place with it. */
  public boolean isOptional() {
    return need == Need.LEFT_OUT;
  }

  /** Whether it may be blank. */
  public boolean mayBeBlank() {
    return need != Need.GIVEN;
  }

  /** Whether it may be given more than once. */
  public boolean isRepeated() {
    return repeated;
  }

  /** The value of an argument for this parameter; empty only where there is no default. */
  Optional<T> read(Value given) {
    Value value = form() == Kind.Form.TEXT && ZERO.equals(given) ? Value.BLANK : given;
    if (value instanceof Value.Blank && mayBeBlank()) {
      return fallback;
    }
    return Optional.of(kind.read(new Argument(name, value, kind.allowed())));
  }

  List<T> readAll(List<Value> values) {
    return values.stream()
        .filter(value -> !(value instanceof Value.Blank))
        .map(value -> kind.read(new Argument(name, value, kind.allowed())))
        .toList();
  }
}
