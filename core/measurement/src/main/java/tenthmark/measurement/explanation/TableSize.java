package tenthmark.measurement.explanation;

/** How many cells a table takes. */
public record TableSize(int height, int width) {}
