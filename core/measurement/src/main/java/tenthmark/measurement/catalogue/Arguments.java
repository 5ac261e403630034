package tenthmark.measurement.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** The arguments of one call, read by parameter. */
public final class Arguments {

  private final List<Parameter<?>> parameters;
  private final List<Value> values;
  private final Sentences sentences;
  private final Supplier<Convention> convention;

  Arguments(
      Declaration declaration,
      List<Value> values,
      Sentences sentences,
      Supplier<Convention> convention) {
    this.sentences = sentences;
    this.convention = convention;
    this.parameters = declaration.parameters();
    this.values = new ArrayList<>(values.size());
    for (Value value : values) {
      this.values.add(single(value));
    }
    boolean open = !parameters.isEmpty() && parameters.get(parameters.size() - 1).isRepeated();
    if (!open && values.size() > parameters.size()) {
      throw ArgumentException.of("arguments.many", values.size(), parameters.size());
    }
  }

  /** The language in which the call writes, and its decimal sign. */
  public Sentences sentences() {
    return sentences;
  }

  /**
   * The convention of the workbook.
   *
   * @throws ArgumentException if the workbook's cannot be read
   */
  public Convention convention() {
    return convention.get();
  }

  /** The value of a parameter that is required or has a default. */
  public <T> T get(Parameter<T> parameter) {
    return find(parameter)
        .orElseThrow(() -> new IllegalStateException(parameter.name() + " has no default"));
  }

  /** The value of a parameter that may be left out. */
  public <T> Optional<T> find(Parameter<T> parameter) {
    int index = indexOf(parameter);
    return parameter.read(index < values.size() ? values.get(index) : Value.BLANK, convention);
  }

  /** Whether a parameter that the function may have was given a value. */
  public boolean isGiven(Parameter<?> parameter) {
    int index = parameters.indexOf(parameter);
    return index >= 0 && index < values.size() && !(values.get(index) instanceof Value.Blank);
  }

  /** The values of a repeated parameter, blank ones left out; at least one. */
  public <T> List<T> all(Parameter<T> parameter) {
    int index = indexOf(parameter);
    List<T> all = parameter.readAll(values.subList(Math.min(index, values.size()), values.size()));
    if (all.isEmpty()) {
      throw ArgumentException.notAllowed(
          parameter.name(), Message.of("found.blank"), parameter.allowed());
    }
    return all;
  }

  /** Which cells of a range are not blank, counted from 0 row by row. */
  public List<Integer> filledPlaces(Parameter<?> parameter) {
    Value value = values.get(indexOf(parameter));
    List<Value> cells = value instanceof Value.Table table ? table.cells() : List.of(value);
    return IntStream.range(0, cells.size())
        .filter(place -> !(cells.get(place) instanceof Value.Blank))
        .boxed()
        .toList();
  }

  /** A range of one cell counts as that cell. */
  private static Value single(Value value) {
    return value instanceof Value.Table table && table.height() == 1 && table.width() == 1
        ? table.rows().get(0).get(0)
        : value;
  }

  private int indexOf(Parameter<?> parameter) {
    int index = parameters.indexOf(parameter);
    if (index < 0) {
      throw new IllegalStateException(parameter.name() + " is not declared");
    }
    return index;
  }
}
