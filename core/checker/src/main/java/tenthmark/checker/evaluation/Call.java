package tenthmark.checker.evaluation;

import java.util.List;
import java.util.Optional;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellRange;

/** A call of a LAB function within a formula. */
public record Call(Declaration function, List<Argument> arguments) {

  /** Copies the arguments. */
  public Call {
    arguments = List.copyOf(arguments);
  }

  /**
   * An argument that is a literal or a reference; any other expression has neither part.
   *
   * @param value the literal, or the recalculated value of the one cell referred to
   * @param range the cells referred to
   */
  public record Argument(Optional<Value> value, Optional<CellRange> range) {}

  /** Whether the function has this role. */
  public boolean is(FunctionRole role) {
    return function.role() == role;
  }

  /** The argument for a parameter, if the function has that parameter and it was given. */
  public Optional<Argument> argument(String parameter) {
    List<String> names = function.parameters().stream().map(Parameter::name).toList();
    int index = names.indexOf(parameter);
    return index < 0 || index >= arguments.size()
        ? Optional.empty()
        : Optional.of(arguments.get(index));
  }

  /** The first argument, if there is one. */
  public Optional<Argument> first() {
    return arguments.stream().findFirst();
  }

  /** The number that is given for a parameter, as far as that can be told. */
  public Optional<Double> number(String parameter) {
    return argument(parameter)
        .flatMap(Argument::value)
        .filter(Value.Numeric.class::isInstance)
        .map(value -> ((Value.Numeric) value).number());
  }

  /** The text that is given for a parameter, as far as that can be told. */
  public Optional<String> text(String parameter) {
    return argument(parameter)
        .flatMap(Argument::value)
        .filter(Value.Text.class::isInstance)
        .map(value -> ((Value.Text) value).text());
  }

  /** The cells that are given for a parameter, if it refers to cells. */
  public Optional<CellRange> range(String parameter) {
    return argument(parameter).flatMap(Argument::range);
  }
}
