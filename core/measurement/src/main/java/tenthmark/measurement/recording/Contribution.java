package tenthmark.measurement.recording;

/**
 * One contribution to the uncertainty of a value.
 *
 * @param kind where it comes from
 * @param dueTo what it is due to, in the student's words; may be empty
 * @param size half-width, zero or greater, in the unit of the value
 */
public record Contribution(ContributionKind kind, String dueTo, double size) {}
