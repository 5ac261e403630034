package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.carrying.Carried;
import tenthmark.measurement.carrying.Combination;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;

/** LAB_CARRYTABLE: how each input contributes to the uncertainty of a calculated result. */
@AutoService(WorksheetFunction.class)
public final class LabCarryTable extends FollowingFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "CARRYTABLE",
          Family.CARRYING,
          ResultKind.TABLE,
          "Lists how each input contributes to the uncertainty of a calculated result, and the result"
              + " in the last row.",
          "To see which input is worth measuring better.",
          CarryParameters.ALL,
          "columns input, value, uncertainty, sensitivity coefficient, contribution, share. "
              + CarryParameters.FORMULA
              + " share = contribution / u(result) (straight) or its square (quadrature); with"
              + " correlations c(i) u(i) times the sum over j of r(i,j) c(j) u(j), divided by"
              + " u(result)²; all 0 if u(result) is 0",
          CarryParameters.SOURCE,
          Example.of("=LAB_CARRYTABLE(A3;A1:A2;B1:B2)", CarryParameters.HOOP, "A1"));

  /** For the catalogue. */
  public LabCarryTable() {
    super(DECLARATION);
  }

  @Override
  Value evaluate(CarryTask task, Arguments arguments) {
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
}
