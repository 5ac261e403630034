package tenthmark.measurement.formula;

/** A function of any number of numbers that cannot be made of functions of two without loss. */
public interface Aggregate {

  /** The sum. */
  Aggregate SUM =
      new Aggregate() {
        @Override
        public String name() {
          return "SUM";
        }

        @Override
        public double value(double[] numbers) {
          return CalcArithmetic.sum(numbers);
        }

        @Override
        public double slope(double[] numbers, int index) {
          return 1;
        }
      };

  /** As a sentence calls it. */
  String name();

  /** Its value. */
  double value(double[] numbers);

  /** Its slope along one of the numbers; NaN if it has none. */
  double slope(double[] numbers, int index);
}
