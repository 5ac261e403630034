package tenthmark.checker.dimension;

import java.util.Set;

/**
 * The numbers that a formula has for its geometry, for counting, and to convert units: powers of
 * ten, small whole numbers, what makes minutes, hours and degrees, each also with π or as a
 * divisor. A number of any other kind may well be a quantity with a unit, such as 9.81.
 */
final class Structural {

  private static final Set<Double> WHOLE =
      Set.of(
          1.0, 2.0, 3.0, 4.0, 6.0, 8.0, 12.0, 16.0, 18.0, 24.0, 32.0, 60.0, 64.0, 180.0, 360.0,
          3600.0, 86400.0);

  private static final double SAME = 1e-9;
  private static final double ABOUT_PI = 1e-3;

  private Structural() {}

  static boolean is(double number) {
    double size = Math.abs(number);
    return isWhole(size)
        || isWhole(1 / size)
        || isAboutWhole(size / Math.PI)
        || isAboutWhole(Math.PI / size)
        || isAboutWhole(size / Math.PI / Math.PI);
  }

  static boolean isPowerOfTen(double number) {
    double power = Math.log10(Math.abs(number));
    return Math.abs(power - Math.rint(power)) < SAME;
  }

  private static boolean isWhole(double size) {
    double rounded = Math.rint(size);
    return isPowerOfTen(size) || Math.abs(size - rounded) <= SAME * size && WHOLE.contains(rounded);
  }

  private static boolean isAboutWhole(double size) {
    return WHOLE.stream().anyMatch(whole -> Math.abs(size - whole) <= ABOUT_PI * whole);
  }
}
