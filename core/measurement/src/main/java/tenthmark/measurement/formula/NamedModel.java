package tenthmark.measurement.formula;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** A model written as a formula of names, such as {@code 4*PI()^2*L/T^2}. */
public final class NamedModel implements Model {

  private static final Pattern NAME = Pattern.compile("[\\p{L}_][\\p{L}\\p{M}\\p{Nd}_.]*");

  private final Formula formula;
  private final int count;
  private final Map<String, Integer> indices = new HashMap<>();
  private final boolean[] reached;

  /**
   * A model from its formula.
   *
   * @param names the names of the inputs, in order; capital and small letters differ
   * @throws FormulaException if a name cannot be one, or the formula uses another name
   */
  public NamedModel(Formula formula, List<String> names) {
    this.formula = formula;
    this.count = names.size();
    for (String name : names) {
      if (!NAME.matcher(name).matches()) {
        throw FormulaException.of("formula.name.bad", name);
      }
      if (indices.put(name, indices.size()) != null) {
        throw FormulaException.of("formula.name.twice", name);
      }
    }
    this.reached = new boolean[names.size()];
    for (Expression.Reference reference : formula.references()) {
      reached[indexOf(((Expression.Name) reference).name())] = true;
    }
  }

  private int indexOf(String name) {
    Integer index = indices.get(name);
    if (index == null) {
      throw FormulaException.of("formula.name.unknown", name);
    }
    return index;
  }

  @Override
  public int inputs() {
    return count;
  }

  @Override
  public boolean reaches(int input) {
    return reached[input];
  }

  @Override
  public <T> T evaluate(Field<T> field, List<T> inputs) {
    Scope<T> scope =
        reference ->
            new Operand.Number<>(inputs.get(indices.get(((Expression.Name) reference).name())));
    return new Evaluator<>(field, scope).number(formula.tree());
  }
}
