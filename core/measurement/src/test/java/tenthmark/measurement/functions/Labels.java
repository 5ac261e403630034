package tenthmark.measurement.functions;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import tenthmark.measurement.catalogue.Value;

/** Reads tables that give one labelled number per row. */
final class Labels {

  private Labels() {}

  /** The numbers by their labels; a row whose second cell is a text is left out. */
  static Map<String, Double> labelled(Value result) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    ((Value.Table) result)
        .rows()
        .forEach(
            row -> {
              if (row.get(1) instanceof Value.Numeric numeric) {
                numbers.put(((Value.Text) row.get(0)).text(), numeric.number());
              }
            });
    return numbers;
  }

  /** The sentence that a table function gives for a bad argument. */
  static String sentence(Value result) {
    return ((Value.Text) ((Value.Table) result).rows().get(0).get(0)).text();
  }

  static Value column(double... numbers) {
    return Calls.column(Arrays.stream(numbers).boxed().toArray());
  }
}
