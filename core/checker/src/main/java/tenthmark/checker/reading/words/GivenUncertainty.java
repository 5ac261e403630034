package tenthmark.checker.reading.words;

/**
 * One uncertainty for many values.
 *
 * @param unit empty if it is that of the values
 */
public record GivenUncertainty(double size, String unit) {}
