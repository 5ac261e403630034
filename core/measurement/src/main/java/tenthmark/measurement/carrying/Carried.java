package tenthmark.measurement.carrying;

import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Linearised;
import tenthmark.measurement.formula.Model;

/**
 * Uncertainties carried through a model to first order (JCGM 100:2008, 5.1): each input contributes
 * its sensitivity coefficient times its uncertainty.
 *
 * @param value the result
 * @param sensitivities the partial derivatives of the result along the inputs
 * @param contributions sensitivity coefficient times uncertainty, with its sign, in the unit of the
 *     result
 */
public record Carried(double value, double[] sensitivities, double[] contributions) {

  /**
   * Carries the uncertainties of the inputs, which keep their kind: half-widths give a half-width
   * when combined straight, standard uncertainties give a standard one in quadrature.
   *
   * @throws FormulaException if the result or a sensitivity coefficient is not defined there
   */
  public static Carried through(Model model, double[] values, double[] uncertainties) {
    Linearised linearised = model.linearised(values);
    double[] sensitivities = linearised.sensitivities();
    double[] contributions = new double[sensitivities.length];
    for (int i = 0; i < contributions.length; i++) {
      contributions[i] = sensitivities[i] * uncertainties[i];
    }
    return new Carried(linearised.value(), sensitivities, contributions);
  }

  /** The uncertainty of the result. */
  public double uncertainty(Combination combination) {
    return combination.total(contributions);
  }
}
