package tenthmark.measurement.line;

/**
 * A measured point.
 *
 * @param ux standard uncertainty of x, zero for a coordinate without one
 * @param uy standard uncertainty of y, zero for a coordinate without one
 */
public record Point(double x, double y, double ux, double uy) {}
