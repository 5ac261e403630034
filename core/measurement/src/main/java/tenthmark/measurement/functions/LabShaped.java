package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.bounds.Shape;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;

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

  private static final Declaration DECLARATION =
      new Declaration(
          "SHAPED",
          Family.STANDARD,
          ResultKind.NUMBER,
          "Gives the standard uncertainty of a quantity that lies between two bounds; normal bounds"
              + " are read as a 95 % interval.",
          "When a bound is to be combined with standard uncertainties.",
          List.of(HALFWIDTH, SHAPE),
          "halfwidth / sqrt(3) (rectangular), / sqrt(6) (triangular), / sqrt(2) (arcsine), / 1.96"
              + " (normal)",
          "JCGM 100:2008, 4.3.7, 4.3.9, H.1 and 4.3.4",
          Example.of("=LAB_SHAPED(0.5;\"triangular\")", "0.2041"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    return Value.of(arguments.get(SHAPE).standardUncertainty(arguments.get(HALFWIDTH)));
  }
}
