package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Breakdown;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.recording.Combine;

/** LAB_TOTAL: the total of several contributions. */
@AutoService(WorksheetFunction.class)
public final class LabTotal implements WorksheetFunction {

  private static final Parameter<List<Double>> CONTRIBUTIONS =
      Parameter.required(
          "contributions",
          "Range with the sizes of the contributions, all in one unit. Blank cells are skipped.",
          Kinds.numbers(1, Kinds.notNegative()));

  private static final Declaration DECLARATION =
      new Declaration(
          "TOTAL",
          Family.RECORDING,
          FunctionRole.TOTAL,
          ResultKind.NUMBER,
          "Gives the total uncertainty from its contributions.",
          "To put one uncertainty beside a value. Straight is a safe upper bound; quadrature "
              + "is for contributions that do not depend on each other.",
          List.of(CONTRIBUTIONS, CommonParameters.COMBINE),
          "straight: sum of the sizes; quadrature: square root of the sum of their squares",
          "straight: common practice, no source; quadrature: JCGM 100:2008, 5.1.2",
          Example.of(
              "=LAB_TOTAL(A1:A3;\"quadrature\")",
              List.of(List.of(0.3), List.of(0.4), List.of(1.2)),
              "1.3"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    Combine combine = arguments.get(CommonParameters.COMBINE);
    return Value.of(combine.total(arguments.get(CONTRIBUTIONS)));
  }

  @Override
  public Optional<Breakdown> breakdown(Arguments arguments) {
    Combine combine = arguments.get(CommonParameters.COMBINE);
    List<Double> sizes = arguments.get(CONTRIBUTIONS);
    double total = combine.total(sizes);
    List<List<Value>> rows = new ArrayList<>();
    for (double size : sizes) {
      double share = total == 0 ? 0 : combine.share(size, total);
      rows.add(List.of(Value.of(rows.size() + 1), Value.of(size), Value.of(share)));
    }
    rows.add(
        List.of(
            Value.of(arguments.sentences().say("label.total")),
            Value.of(total),
            Value.of(total == 0 ? 0 : 1)));
    return Optional.of(
        new Breakdown(
            List.of("column.contribution", "column.size", Breakdown.SHARE),
            new Value.Table(rows),
            Optional.of(CONTRIBUTIONS),
            arguments.filledPlaces(CONTRIBUTIONS)));
  }
}
