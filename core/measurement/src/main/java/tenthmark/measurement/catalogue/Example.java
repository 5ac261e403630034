package tenthmark.measurement.catalogue;

import java.util.List;

/**
 * A call that the function reference shows and the tests run.
 *
 * @param formula as a user types it, with semicolons, for instance {@code =LAB_SHAPED(3)}
 * @param cells what the cells hold that the formula refers to, from A1 on, by rows; may be empty
 * @param result the first cell of the result, as it is printed: a text, or a number that holds to
 *     the digits printed
 */
public record Example(String formula, List<List<Value>> cells, String result) {

  /** An example that refers to no cells. */
  public static Example of(String formula, String result) {
    return new Example(formula, List.of(), result);
  }

  /** An example with cells from A1 on; each row is a list of numbers and texts. */
  public static Example of(String formula, List<List<Object>> cells, String result) {
    return new Example(
        formula,
        cells.stream().map(row -> row.stream().map(Example::cell).toList()).toList(),
        result);
  }

  private static Value cell(Object content) {
    return content instanceof java.lang.Number number
        ? Value.of(number.doubleValue())
        : Value.of((String) content);
  }
}
