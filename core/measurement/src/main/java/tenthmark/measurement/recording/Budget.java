package tenthmark.measurement.recording;

import java.math.BigDecimal;
import java.util.List;
import tenthmark.measurement.rounding.Decimals;

/**
 * The contributions to the uncertainty of one value and how they are combined.
 *
 * @param contributions in the student's order
 * @param combine how they make the total
 */
public record Budget(List<Contribution> contributions, Combine combine) {

  /** Copies the contributions. */
  public Budget {
    contributions = List.copyOf(contributions);
  }

  /** The total uncertainty, in the unit of the contributions. */
  public BigDecimal total() {
    return combine.totalOf(
        contributions.stream()
            .map(contribution -> Decimals.shortest(contribution.size()))
            .toList());
  }

  /**
   * The part of the total that each contribution makes up, between 0 and 1; the shares add up to 1.
   * If the total is zero, every share is zero.
   */
  public List<Double> shares() {
    double total = total().doubleValue();
    return contributions.stream()
        .map(contribution -> total == 0 ? 0 : combine.share(contribution.size(), total))
        .toList();
  }
}
