package tenthmark.measurement.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * All that is said once about a worksheet function.
 *
 * @param name the part after {@code LAB_}, in upper case letters; frozen from the first release
 * @param family where the reference lists it
 * @param role what its result is in a measurement record
 * @param result what it gives back
 * @param description one sentence for the function wizard
 * @param use when to use it, for the reference; whole sentences
 * @param parameters in order; optional ones after required ones, a repeated one last
 * @param formula the formula and its conditions, for the reference; plain text
 * @param source clause or table the formula is from, or {@link #NO_SOURCE}
 * @param example a call with its result
 */
public record Declaration(
    String name,
    Family family,
    FunctionRole role,
    ResultKind result,
    String description,
    String use,
    List<Parameter<?>> parameters,
    String formula,
    String source,
    Example example) {

  /**
   * The source of what is in everybody's use and of which nobody is known to have written first.
   */
  public static final String NO_SOURCE = "common practice, no source";

  private static final String STORED_PREFIX = "TENTHMARK.LAB.";

  /** What every name that a user types begins with. */
  public static final String DISPLAY_PREFIX = "LAB_";

  private static final Pattern NAME = Pattern.compile("[A-Z]+");

  /** Checks the name and the order of the parameters. */
  public Declaration {
    parameters = List.copyOf(parameters);
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("not a function name: " + name);
    }
    if (parameters.stream().map(Parameter::name).distinct().count() < parameters.size()) {
      throw new IllegalArgumentException(name + ": two parameters have one name");
    }
    boolean optional = false;
    for (Parameter<?> parameter : parameters) {
      if (optional && !parameter.isOptional()) {
        throw new IllegalArgumentException(
            name + ": " + parameter.name() + " follows an optional one");
      }
      optional |= parameter.isOptional();
    }
    for (Parameter<?> parameter : parameters.subList(0, Math.max(0, parameters.size() - 1))) {
      if (parameter.isRepeated()) {
        throw new IllegalArgumentException(name + ": " + parameter.name() + " is not the last");
      }
    }
  }

  /** The name that a user types: {@code LAB_READING}. */
  public String displayName() {
    return DISPLAY_PREFIX + name;
  }

  /** The name that every file holds: {@code TENTHMARK.LAB.READING}. */
  public String storedName() {
    return STORED_PREFIX + name;
  }

  /** The name of the UNO method: {@code reading}. */
  public String methodName() {
    return name.toLowerCase(Locale.ROOT);
  }

  /** Whether what the function gives depends on the workbook's convention. */
  public boolean usesConvention() {
    return parameters.stream().anyMatch(Parameter::isByConvention);
  }

  /** The call as it is documented, optional parameters in brackets. */
  public String signature() {
    StringBuilder signature = new StringBuilder(displayName()).append('(');
    String separator = "";
    for (Parameter<?> parameter : parameters) {
      signature.append(separator).append(inBrackets(parameter));
      separator = "; ";
    }
    return signature.append(')').toString();
  }

  private static String inBrackets(Parameter<?> parameter) {
    if (parameter.isRepeated()) {
      return parameter.name() + "; ...";
    }
    return parameter.mayBeBlank() ? "[" + parameter.name() + "]" : parameter.name();
  }
}
