package tenthmark.measurement.recording;

import java.util.List;

/**
 * The ends of an object that are not sharp, such as a soft or rounded edge.
 *
 * @param extents over what length each end is blurred, zero or greater, in the unit of the value
 */
public record FuzzyEdges(List<Double> extents) {

  /**
   * The physical uncertainty, half of each extent, summed, as a half-width in the unit of the
   * extents. Common practice, no source.
   */
  public double uncertainty() {
    return Combine.STRAIGHT.total(extents.stream().map(extent -> extent / 2).toList());
  }
}
