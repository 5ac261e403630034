package tenthmark.checker.grade;

import java.math.BigDecimal;
import java.util.Optional;
import tenthmark.checker.remark.Remark;
import tenthmark.checker.rules.Finding;

/**
 * What one finding costs, or the instructor takes off.
 *
 * @param finding none for a deduction of the instructor's own
 * @param points what it costs in the end
 * @param remark the instructor's word on it
 */
public record Deduction(Optional<Finding> finding, BigDecimal points, Optional<Remark> remark) {}
