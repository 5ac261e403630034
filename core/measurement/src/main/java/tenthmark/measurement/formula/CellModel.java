package tenthmark.measurement.formula;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tenthmark.measurement.formula.KnownCells.Step;

/**
 * A model written in cells: the result's formula and those of the intermediate cells between it and
 * the inputs, in an order in which each follows what it needs.
 */
public final class CellModel implements Model {

  private final CellAddress result;
  private final List<CellAddress> inputs;
  private final Set<CellAddress> reached;
  private final List<Step> steps;
  private final KnownCells known;

  CellModel(CellAddress result, List<CellAddress> inputs, Precedents precedents) {
    this.result = result;
    this.inputs = inputs;
    this.reached = precedents.reached();
    this.steps = precedents.steps();
    this.known = precedents.known();
  }

  @Override
  public int inputs() {
    return inputs.size();
  }

  @Override
  public boolean reaches(int input) {
    return reached.contains(inputs.get(input));
  }

  /** How many steps one computation of the result takes: operations and cells. */
  public long size() {
    return steps.stream().mapToLong(step -> 1 + known.size(step)).sum();
  }

  /** The cells with formulas through which the inputs reach the result, the result last. */
  public List<CellAddress> between() {
    return steps.stream().map(Step::cell).toList();
  }

  @Override
  public <T> T evaluate(Field<T> field, List<T> values) {
    Map<CellAddress, Operand<T>> changing = new HashMap<>();
    for (int i = 0; i < inputs.size(); i++) {
      changing.put(inputs.get(i), new Operand.Number<>(values.get(i)));
    }
    for (Step step : steps) {
      changing.put(step.cell(), known.compute(step, field, changing));
    }
    Operand<T> value = steps.isEmpty() ? known.constant(result, field) : changing.get(result);
    return new Evaluator<T>(field, reference -> value).numberIn(value);
  }
}
