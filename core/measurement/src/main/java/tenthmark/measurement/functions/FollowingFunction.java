package tenthmark.measurement.functions;

import java.util.Optional;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Breakdown;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.Follower;
import tenthmark.measurement.formula.Formulas;

/** A function that follows the formula of a result's cell back to its inputs. */
abstract class FollowingFunction implements WorksheetFunction {

  private final Declaration declaration;
  private final Follower follower = new Follower(new Formulas());

  FollowingFunction(Declaration declaration) {
    this.declaration = declaration;
  }

  /** The result, once the formula has been followed. */
  abstract Value evaluate(CarryTask task, Arguments arguments);

  @Override
  public final Declaration declaration() {
    return declaration;
  }

  @Override
  public final Value evaluate(Arguments arguments) {
    return evaluate(task(arguments), arguments);
  }

  /** What each input contributes. */
  final Optional<Breakdown> breakdownOf(Arguments arguments) {
    return Optional.of(
        CarriedTable.breakdown(task(arguments), arguments, Optional.of(CarryParameters.INPUTS)));
  }

  private CarryTask task(Arguments arguments) {
    return CarryTask.inCells(arguments, follower);
  }
}
