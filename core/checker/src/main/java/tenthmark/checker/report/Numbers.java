package tenthmark.checker.report;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/** A list of numbers in an eighth of the memory: a class may hold millions of readings. */
final class Numbers extends AbstractList<Double> implements RandomAccess {

  private final double[] numbers;

  private Numbers(double[] numbers) {
    this.numbers = numbers;
  }

  /** A list that never changes. */
  static List<Double> copyOf(List<Double> numbers) {
    return numbers instanceof Numbers
        ? numbers
        : new Numbers(numbers.stream().mapToDouble(Double::doubleValue).toArray());
  }

  @Override
  public Double get(int index) {
    return numbers[index];
  }

  @Override
  public int size() {
    return numbers.length;
  }
}
