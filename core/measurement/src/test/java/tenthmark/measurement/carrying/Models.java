package tenthmark.measurement.carrying;

import java.util.List;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Model;
import tenthmark.measurement.formula.NamedModel;

/** Models from their formulas. */
final class Models {

  private Models() {}

  static Model model(String formula, String... names) {
    return new NamedModel(new Formulas().withNames(formula), List.of(names));
  }
}
