package tenthmark.measurement.formula;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A model written in cells: the result's formula and those of the intermediate cells between it and
 * the inputs, in an order in which each follows what it needs.
 */
public final class CellModel implements Model {

  private final CellAddress result;
  private final List<CellAddress> inputs;
  private final Precedents precedents;

  CellModel(CellAddress result, List<CellAddress> inputs, Precedents precedents) {
    this.result = result;
    this.inputs = inputs;
    this.precedents = precedents;
  }

  @Override
  public int inputs() {
    return inputs.size();
  }

  @Override
  public boolean reaches(int input) {
    return precedents.reaches(inputs.get(input));
  }

  /** The cells with formulas through which the inputs reach the result, the result last. */
  public List<CellAddress> between() {
    return precedents.steps().stream().map(Precedents.Step::cell).toList();
  }

  @Override
  public <T> T evaluate(Field<T> field, List<T> values) {
    Map<CellAddress, Operand<T>> known = new HashMap<>();
    for (int i = 0; i < inputs.size(); i++) {
      known.put(inputs.get(i), new Operand.Number<>(values.get(i)));
    }
    for (Precedents.Step step : precedents.steps()) {
      known.put(step.cell(), precedents.compute(step, field, known));
    }
    Operand<T> value =
        known.containsKey(result) ? known.get(result) : precedents.constant(result, field);
    return new Evaluator<T>(field, reference -> value).numberIn(value);
  }
}
