package tenthmark.measurement.carrying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Model;

/**
 * The lowest and the highest result when each input takes its lower or upper bound, in every
 * combination, or all take their measured values. They bound the result where it rises or falls
 * steadily with each input.
 */
public record Extremes(double lowest, double highest) {

  /** Most inputs with an uncertainty: 2 to this power results are computed. */
  public static final int MOST_INPUTS = 16;

  /**
   * Computes every corner.
   *
   * @param uncertainties half-widths, each zero or greater
   * @throws FormulaException if there are too many inputs or a result is not defined at a corner
   */
  public static Extremes of(Model model, double[] values, double[] uncertainties) {
    List<Integer> uncertain = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      if (uncertainties[i] != 0 && model.reaches(i)) {
        uncertain.add(i);
      }
    }
    if (uncertain.size() > MOST_INPUTS) {
      throw FormulaException.of("formula.corners", uncertain.size(), MOST_INPUTS);
    }
    int corners = 1 << uncertain.size();
    double lowest = model.value(values);
    double highest = lowest;
    double[] results = model.values(corners(values, uncertainties, uncertain, corners), corners);
    for (int corner = 0; corner < corners; corner++) {
      if (Double.isNaN(results[corner])) {
        model.value(corner(values, uncertainties, uncertain, corner));
      }
      lowest = Math.min(lowest, results[corner]);
      highest = Math.max(highest, results[corner]);
    }
    return new Extremes(lowest, highest);
  }

  /** How many results are computed at most. */
  public static long corners(double[] uncertainties) {
    long uncertain = Arrays.stream(uncertainties).filter(size -> size != 0).count();
    return 1L << Math.min(uncertain, MOST_INPUTS);
  }

  private static List<double[]> corners(
      double[] values, double[] uncertainties, List<Integer> uncertain, int corners) {
    List<double[]> inputs = new ArrayList<>();
    for (double value : values) {
      inputs.add(new double[] {value});
    }
    for (int k = 0; k < uncertain.size(); k++) {
      int input = uncertain.get(k);
      double[] bounds = new double[corners];
      for (int corner = 0; corner < corners; corner++) {
        bounds[corner] = bound(values[input], uncertainties[input], corner >> k);
      }
      inputs.set(input, bounds);
    }
    return inputs;
  }

  private static double[] corner(
      double[] values, double[] uncertainties, List<Integer> uncertain, int corner) {
    double[] point = values.clone();
    for (int k = 0; k < uncertain.size(); k++) {
      int input = uncertain.get(k);
      point[input] = bound(values[input], uncertainties[input], corner >> k);
    }
    return point;
  }

  private static double bound(double value, double uncertainty, int bits) {
    return (bits & 1) == 0 ? value - uncertainty : value + uncertainty;
  }
}
