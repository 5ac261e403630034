package tenthmark.measurement.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tenthmark.measurement.carrying.Carried;
import tenthmark.measurement.carrying.Combination;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Breakdown;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;

/** How each input contributes to an uncertainty that is carried. */
final class CarriedTable {

  private static final List<String> COLUMNS =
      List.of(
          "column.input",
          "column.value",
          "column.uncertainty",
          "column.sensitivity",
          "column.contribution",
          Breakdown.SHARE);

  private CarriedTable() {}

  /** One row for each input, and the result in the last row. */
  static Value.Table of(CarryTask task, Arguments arguments) {
    Combination combination = task.combination(arguments);
    Carried carried = task.carried();
    double total = carried.uncertainty(combination);
    double[] contributions = carried.contributions();
    double[] shares =
        total == 0 ? new double[contributions.length] : combination.shares(contributions);
    List<List<Value>> rows = new ArrayList<>();
    for (int i = 0; i < contributions.length; i++) {
      rows.add(
          List.of(
              Value.of(task.labels().get(i)),
              Value.of(task.values()[i]),
              Value.of(task.uncertainties()[i]),
              Value.of(carried.sensitivities()[i]),
              Value.of(Math.abs(contributions[i])),
              Value.of(shares[i])));
    }
    rows.add(
        List.of(
            Value.of(arguments.sentences().say("label.result")),
            Value.of(carried.value()),
            Value.of(total),
            Value.BLANK,
            Value.of(total),
            Value.of(total == 0 ? 0 : 1)));
    return new Value.Table(rows);
  }

  /** The same with its headings; the inputs are the cells of a range or have names. */
  static Breakdown breakdown(CarryTask task, Arguments arguments, Optional<Parameter<?>> cells) {
    return new Breakdown(COLUMNS, of(task, arguments), cells, task.places());
  }
}
