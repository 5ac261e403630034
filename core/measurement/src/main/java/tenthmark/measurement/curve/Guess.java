package tenthmark.measurement.curve;

/**
 * A parameter of a curve and the value from which the fit starts.
 *
 * @param name as the model writes it
 */
public record Guess(String name, double value) {}
