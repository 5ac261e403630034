package tenthmark.measurement.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellModel;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Follower;
import tenthmark.measurement.formula.FormulaException;

/**
 * Inputs that are calculated from other inputs. Carried as if they were independent, they would
 * count what they have in common twice or not at all.
 *
 * @param inputs the cells that are listed as inputs
 * @param values what they hold
 */
record InputsOfInputs(Follower follower, Cells cells, List<CellAddress> inputs, double[] values) {

  /** Refuses an input that changes with another one that is uncertain. */
  void require(double[] uncertainties, Function<CellAddress, String> labels) {
    for (int i = 0; i < inputs.size(); i++) {
      if (!(cells.at(inputs.get(i)) instanceof CellContent.Formula)) {
        continue;
      }
      for (int other : behind(i)) {
        if (uncertainties[other] > 0) {
          throw ArgumentException.of(
              "inputs.dependent", labels.apply(inputs.get(i)), labels.apply(inputs.get(other)));
        }
      }
    }
  }

  /** The inputs that an input changes with, by their indices. */
  private List<Integer> behind(int input) {
    List<CellAddress> others = new ArrayList<>(inputs);
    others.remove(input);
    CellModel model = CarryTask.explained(() -> follower.model(cells, inputs.get(input), others));
    List<Integer> behind = new ArrayList<>();
    for (int i = 0; i < others.size(); i++) {
      int index = i < input ? i : i + 1;
      if (model.reaches(i) && changes(model, input, i)) {
        behind.add(index);
      }
    }
    return behind;
  }

  private boolean changes(CellModel model, int input, int other) {
    double[] point = new double[values.length - 1];
    for (int i = 0; i < point.length; i++) {
      point[i] = values[i < input ? i : i + 1];
    }
    try {
      return model.linearised(point).sensitivities()[other] != 0;
    } catch (FormulaException unknown) {
      return true;
    }
  }
}
