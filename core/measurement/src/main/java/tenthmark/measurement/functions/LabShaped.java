package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import tenthmark.measurement.bounds.Shape;
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
import tenthmark.measurement.coverage.CoverageFactor;
import tenthmark.measurement.wording.Message;

/** LAB_SHAPED: the standard uncertainty of a quantity that lies between two bounds. */
@AutoService(WorksheetFunction.class)
public final class LabShaped implements WorksheetFunction {

  private static final Parameter<Double> HALFWIDTH =
      Parameter.required("halfwidth", "Half the distance between the bounds.", Kinds.notNegative());

  private static final Parameter<Shape> SHAPE =
      Parameter.optional(
          "shape",
          "Where values are likely: rectangular, triangular, arcsine, or normal (the"
              + " bounds enclose 95 %). Rectangular if left out.",
          Kinds.choice(Shape.class),
          Shape.RECTANGULAR);

  private static final Parameter<Double> COVER =
      Parameter.optional(
          "cover",
          "Only for normal: the level of the bounds in percent, such as 99, or their coverage"
              + " factor from 1 to 20. 1.96 if left out.",
          Kinds.percent(
              Message.of("allowed.cover", 1, 20, 50, 100, new Message.Figure("0.95")),
              cover -> isFactor(cover) || isLevel(cover),
              cover -> isFactor(cover) || isLevel(cover)));

  private static final Declaration DECLARATION =
      new Declaration(
          "SHAPED",
          Family.STANDARD,
          FunctionRole.STANDARD,
          ResultKind.NUMBER,
          "Gives the standard uncertainty of a quantity that lies between two bounds; normal bounds"
              + " are read as a 95 % interval unless cover says another.",
          "When a bound is to be combined with standard uncertainties.",
          List.of(HALFWIDTH, SHAPE, COVER),
          "halfwidth / sqrt(3) (rectangular), / sqrt(6) (triangular), / sqrt(2) (arcsine), / 1.96"
              + " (normal); with cover normal is / cover, or / the normal quantile at (1 +"
              + " cover/100)/2 where cover is a level in percent",
          "JCGM 100:2008, 4.3.7, 4.3.9, H.1, 4.3.3 and 4.3.4",
          Example.of("=LAB_SHAPED(0.5;\"triangular\")", "0.2041"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    double halfwidth = arguments.get(HALFWIDTH);
    Shape shape = arguments.get(SHAPE);
    Optional<Double> cover = arguments.find(COVER);
    if (cover.isEmpty()) {
      return Value.of(shape.standardUncertainty(halfwidth));
    }
    if (shape != Shape.NORMAL) {
      throw ArgumentException.of("cover.shape", Kinds.word(shape));
    }
    return Value.of(halfwidth / factor(cover.get()));
  }

  private static boolean isFactor(double cover) {
    return cover >= 1 && cover <= 20;
  }

  private static boolean isLevel(double cover) {
    return cover >= 50 && cover < 100;
  }

  private static double factor(double cover) {
    return isLevel(cover) ? CoverageFactor.of(Double.POSITIVE_INFINITY, cover / 100) : cover;
  }
}
