package tenthmark.samples.classset;

/**
 * A scale and how it is read.
 *
 * @param spacing wide or fine
 */
record Scale(double division, String spacing, int ends) {

  double reading() {
    return division * ends / (spacing.equals("wide") ? 10 : 4);
  }
}
