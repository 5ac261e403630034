package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.stream.Stream;
import tenthmark.measurement.carrying.Correlations;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.Follower;
import tenthmark.measurement.formula.Formulas;

/** LAB_CARRYPAIR: how far two results that are calculated from the same inputs err together. */
@AutoService(WorksheetFunction.class)
public final class LabCarryPair implements WorksheetFunction {

  private static final Parameter<CellBlock> OTHER =
      Parameter.required(
          "other",
          "The cell that holds the formula of the other result, from the same inputs.",
          Kinds.reference());

  private static final Declaration DECLARATION =
      new Declaration(
          "CARRYPAIR",
          Family.CARRYING,
          FunctionRole.OTHER,
          ResultKind.TABLE,
          "Gives the standard uncertainties of two results that are calculated from the same"
              + " inputs, and their correlation.",
          "When both results are used in one more calculation: they are not independent then.",
          List.of(
              CarryParameters.RESULT,
              OTHER,
              CarryParameters.INPUTS,
              CarryParameters.UNCERTAINTIES,
              CarryParameters.CORRELATIONS),
          "covariance = sum over i and j of r(i,j) c(i) u(i) d(j) u(j), with c and d the"
              + " sensitivity coefficients of the two results, u the standard uncertainties of the"
              + " inputs and r their correlations; correlation = covariance/(u(result) u(other))",
          "JCGM 100:2008, 5.2.2, F.1.2.3 and H.2.3",
          Example.of(
              "=LAB_CARRYPAIR(A3;A4;A1:A2;B1:B2)",
              Stream.concat(CarryParameters.HOOP.stream(), Stream.of(List.of("=A1*A2", "")))
                  .map(row -> List.<Object>copyOf(row))
                  .toList(),
              "uncertainty of result"));

  private final Follower follower = new Follower(new Formulas());

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    CarryTask task = CarryTask.inCells(arguments, follower);
    Correlations correlations =
        task.correlations(CarryParameters.CORRELATIONS, arguments)
            .orElseGet(() -> Correlations.none(task.places().size()));
    double[] result = task.carried().contributions();
    double[] other = CarryTask.inCells(OTHER, arguments, follower).carried().contributions();
    double uncertainty = correlations.total(result);
    double otherUncertainty = correlations.total(other);
    if (uncertainty == 0 || otherUncertainty == 0) {
      throw ArgumentException.of("carry.certain");
    }
    double covariance = correlations.covariance(result, other);
    return new LabelledRows(arguments.sentences())
        .with("pair.result", uncertainty)
        .with("pair.other", otherUncertainty)
        .with("pair.covariance", covariance)
        .with("pair.correlation", covariance / uncertainty / otherUncertainty)
        .table();
  }
}
