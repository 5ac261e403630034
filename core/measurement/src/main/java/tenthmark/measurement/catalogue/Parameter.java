package tenthmark.measurement.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import tenthmark.measurement.recording.Convention;
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
  private final Optional<Function<Convention, T>> fallback;
  private final Need need;
  private final boolean repeated;
  private final boolean byConvention;

  private enum Need {
    GIVEN,
    PLACE_KEPT,
    LEFT_OUT
  }

  private Parameter(
      String name,
      String description,
      Kind<T> kind,
      Optional<Function<Convention, T>> fallback,
      Need need,
      boolean repeated,
      boolean byConvention) {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("not a parameter name: " + name);
    }
    this.name = name;
    this.description = description;
    this.kind = kind;
    this.fallback = fallback;
    this.need = need;
    this.repeated = repeated;
    this.byConvention = byConvention;
  }

  private Parameter(String name, String description, Kind<T> kind, Need need, boolean repeated) {
    this(name, description, kind, Optional.empty(), need, repeated, false);
  }

  /** A parameter that must be given. */
  public static <T> Parameter<T> required(String name, String description, Kind<T> kind) {
    return new Parameter<>(name, description, kind, Need.GIVEN, false);
  }

  /** A parameter that may be left out or blank, with the value it then has. */
  public static <T> Parameter<T> optional(
      String name, String description, Kind<T> kind, T fallback) {
    return new Parameter<>(
        name, description, kind, Optional.of(convention -> fallback), Need.LEFT_OUT, false, false);
  }

  /**
   * A parameter that may be left out or blank and then has the value of the workbook's convention.
   */
  public static <T> Parameter<T> byConvention(
      String name, String description, Kind<T> kind, Function<Convention, T> fallback) {
    return new Parameter<>(
        name, description, kind, Optional.of(fallback), Need.LEFT_OUT, false, true);
  }

  /** A parameter that may be left out or blank and then has no value. */
  public static <T> Parameter<T> optional(String name, String description, Kind<T> kind) {
    return new Parameter<>(name, description, kind, Need.LEFT_OUT, false);
  }

  /**
   * A parameter before required ones that may be blank and then has no value; its place is kept
   * between two semicolons.
   */
  public static <T> Parameter<T> blankable(String name, String description, Kind<T> kind) {
    return new Parameter<>(name, description, kind, Need.PLACE_KEPT, false);
  }

  /** A last parameter that must be given once and may be given any number of times. */
  public static <T> Parameter<T> repeated(String name, String description, Kind<T> kind) {
    return new Parameter<>(name, description, kind, Need.GIVEN, true);
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

  /** Whether what it means depends on the workbook's convention. */
  public boolean isByConvention() {
    return byConvention;
  }

  /** The value of an argument for this parameter; empty only where there is no default. */
  Optional<T> read(Value given, Supplier<Convention> convention) {
    Value value = form() == Kind.Form.TEXT && ZERO.equals(given) ? Value.BLANK : given;
    if (value instanceof Value.Blank && mayBeBlank()) {
      return fallback.map(choice -> choice.apply(convention.get()));
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
