package tenthmark.checker.course;

/**
 * The value that a course accepts for a quantity.
 *
 * @param value in the unit of the quantity
 * @param uncertainty zero or greater, in the same unit
 * @param gap how many times the allowed difference a result may differ, greater than zero
 */
public record AcceptedValue(double value, double uncertainty, double gap) {}
