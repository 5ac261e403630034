package tenthmark.checker.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.course.Course;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;

/**
 * What a course expects, set against the records of a workbook. A record is told by its quantity's
 * name; where no record has the name, by the symbol, if one record alone has it.
 *
 * @param records the records found
 * @param missing the quantities without any
 */
public record Expectations(List<ExpectedRecord> records, List<ExpectedQuantity> missing) {

  /** Copies the lists. */
  public Expectations {
    records = List.copyOf(records);
    missing = List.copyOf(missing);
  }

  static Expectations of(Course course, List<MeasurementRecord> all) {
    List<ExpectedRecord> found = new ArrayList<>();
    List<ExpectedQuantity> unnamed = new ArrayList<>();
    Set<MeasurementRecord> taken = new HashSet<>();
    for (ExpectedQuantity quantity : course.quantities()) {
      List<MeasurementRecord> named = all.stream().filter(r -> isNamed(r, quantity)).toList();
      named.forEach(measurement -> found.add(new ExpectedRecord(quantity, measurement)));
      taken.addAll(named);
      if (named.isEmpty()) {
        unnamed.add(quantity);
      }
    }
    List<ExpectedQuantity> missing = new ArrayList<>();
    for (ExpectedQuantity quantity : unnamed) {
      List<MeasurementRecord> withSymbol =
          all.stream().filter(r -> !taken.contains(r) && hasSymbol(r, quantity)).toList();
      if (withSymbol.isEmpty()) {
        missing.add(quantity);
      } else if (withSymbol.size() == 1) {
        found.add(new ExpectedRecord(quantity, withSymbol.get(0)));
      }
    }
    return new Expectations(found, missing);
  }

  /** The name of the apparatus by which the course has a record measured, if it names one. */
  Optional<String> apparatus(MeasurementRecord measurement) {
    return records.stream()
        .filter(expected -> expected.measurement().equals(measurement))
        .flatMap(expected -> expected.quantity().apparatus().stream())
        .findFirst();
  }

  /** Whether a record is of a quantity that the course expects without dimension. */
  boolean isPureNumber(MeasurementRecord measurement) {
    return records.stream()
        .filter(expected -> expected.measurement().equals(measurement))
        .anyMatch(expected -> expected.quantity().unit().text().equals("1"));
  }

  private static boolean isNamed(MeasurementRecord measurement, ExpectedQuantity quantity) {
    return measurement.text(Field.QUANTITY).filter(quantity::isNamed).isPresent();
  }

  private static boolean hasSymbol(MeasurementRecord measurement, ExpectedQuantity quantity) {
    return quantity.symbol().isPresent()
        && quantity.symbol().equals(measurement.text(Field.SYMBOL));
  }
}
