package tenthmark.measurement.formula;

/**
 * A model close to one point: its value there and its partial derivative along each input, the
 * sensitivity coefficients of JCGM 100:2008, 5.1.3.
 *
 * @param value the result, in its own unit
 * @param sensitivities one for each input, in units of the result per unit of the input
 */
public record Linearised(double value, double[] sensitivities) {}
