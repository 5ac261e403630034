package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.OptionalDouble;
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
import tenthmark.measurement.coverage.EffectiveFreedom;
import tenthmark.measurement.coverage.EffectiveFreedom.Contribution;
import tenthmark.measurement.wording.Message;

/** LAB_FREEDOM: the effective degrees of freedom of a combined uncertainty. */
@AutoService(WorksheetFunction.class)
public final class LabFreedom implements WorksheetFunction {

  private static final Parameter<List<OptionalDouble>> SIZES =
      Parameter.required(
          "sizes",
          "Standard uncertainty of each contribution, all in the unit of the result.",
          Kinds.column(Kinds.notNegative()));

  private static final Parameter<List<OptionalDouble>> FREEDOMS =
      Parameter.required(
          "freedoms",
          "Of each contribution: n - 1 for a mean of n readings; blank if it is known as"
              + " well as can be (infinite).",
          Kinds.column(Kinds.numberThat(Message.of("allowed.freedoms"), number -> number >= 1)));

  private static final Declaration DECLARATION =
      new Declaration(
          "FREEDOM",
          Family.STANDARD,
          FunctionRole.STATISTIC,
          ResultKind.EITHER,
          "Gives the effective degrees of freedom of a combined standard uncertainty.",
          "Before LAB_COVER, when some contributions come from few repeats.",
          List.of(SIZES, FREEDOMS),
          "sum(size²)² / sum(size⁴/freedom), not rounded; the word infinite if every freedom is"
              + " blank. A blank freedom beside a size means infinite, a blank size skips its row.",
          "JCGM 100:2008, G.4.1 (Welch-Satterthwaite)",
          Example.of(
              "=LAB_FREEDOM(A1:A3;B1:B3)",
              List.of(List.of(0.04, 4), List.of(0.02, 9), List.of(0.03, "")),
              "12.8"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    List<OptionalDouble> freedoms =
        arguments.get(FREEDOMS).stream()
            .map(cell -> OptionalDouble.of(cell.orElse(Double.POSITIVE_INFINITY)))
            .toList();
    List<Contribution> contributions =
        new CompleteRows()
                .with(SIZES.name(), arguments.get(SIZES))
                .with(FREEDOMS.name(), freedoms)
                .atLeast(1, "combined")
                .stream()
                .map(row -> new Contribution(row[0], row[1]))
                .toList();
    if (contributions.stream().allMatch(contribution -> contribution.size() == 0)) {
      throw ArgumentException.of("sizes.zero");
    }
    double freedom = EffectiveFreedom.of(contributions);
    return Double.isInfinite(freedom)
        ? Value.of(arguments.sentences().say(LabCover.INFINITE))
        : Value.of(freedom);
  }
}
