package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.OptionalDouble;
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
import tenthmark.measurement.repeats.WeightedMean;

/** LAB_WEIGHTED: the mean of results that each have their own uncertainty. */
@AutoService(WorksheetFunction.class)
public final class LabWeighted implements WorksheetFunction {

  private static final Parameter<List<OptionalDouble>> VALUES =
      Parameter.required(
          "values", "Results for one quantity, at least 2.", Kinds.column(Kinds.number()));

  private static final Parameter<List<OptionalDouble>> UNCERTAINTIES =
      Parameter.required(
          "uncertainties",
          "Standard uncertainty of each result, in the same unit.",
          Kinds.column(Kinds.positive()));

  private static final Declaration DECLARATION =
      new Declaration(
          "WEIGHTED",
          Family.REPEATS,
          FunctionRole.MEAN,
          ResultKind.TABLE,
          "Gives the weighted mean of results with different uncertainties, and whether they"
              + " scatter as their uncertainties say.",
          "When the same quantity was measured in several ways with different uncertainties.",
          List.of(VALUES, UNCERTAINTIES),
          "w = 1/u²; mean = sum(w value)/sum(w); its uncertainty = 1/sqrt(sum(w)), from the given"
              + " uncertainties alone; chi-squared = sum(w (value - mean)²); degrees of freedom = n"
              + " - 1; scatter ratio = sqrt(chi-squared/degrees of freedom), about 1 if the results"
              + " agree within their uncertainties. A row with a blank cell is skipped.",
          "Birge, Phys. Rev. 40 (1932) 207; common practice in statistics",
          Example.of(
              "=LAB_WEIGHTED(A1:A3;B1:B3)",
              List.of(List.of(2.31, 0.02), List.of(2.35, 0.04), List.of(2.28, 0.05)),
              "weighted mean"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    List<double[]> rows =
        new CompleteRows()
            .with(VALUES.name(), arguments.get(VALUES))
            .with(UNCERTAINTIES.name(), arguments.get(UNCERTAINTIES))
            .atLeast(2, "mean");
    WeightedMean mean =
        WeightedMean.of(
            rows.stream().mapToDouble(row -> row[0]).toArray(),
            rows.stream().mapToDouble(row -> row[1]).toArray());
    return new LabelledRows(arguments.sentences())
        .with("weighted.mean", mean.mean())
        .with("uncertainty", mean.uncertainty())
        .with("chi.squared", mean.chiSquared())
        .with("freedom", mean.freedom())
        .with("scatter.ratio", mean.scatterRatio())
        .table();
  }
}
