package tenthmark.checker.classroom;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tenthmark.checker.course.AcceptedValue;
import tenthmark.checker.course.Course;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.RecordSummary;

/**
 * The values of one quantity in a class.
 *
 * @param quantity its name
 * @param unit may be empty
 * @param accepted the value that the course accepts, if it gives one
 * @param values in the order of the class
 */
public record Distribution(
    String quantity, String unit, Optional<AcceptedValue> accepted, List<Value> values) {

  /** So many workbooks must have a quantity that no course expects. */
  public static final int LEAST = 3;

  /**
   * One value.
   *
   * @param uncertainty zero or greater; empty if it is missing
   */
  public record Value(Path file, double value, Optional<Double> uncertainty) {}

  private record Name(String quantity, String unit) {}

  /** Copies the values. */
  public Distribution {
    values = List.copyOf(values);
  }

  /** What a course expects; without expectations what at least three workbooks name alike. */
  public static List<Distribution> of(List<FileReport> reports, Course course) {
    return course.quantities().isEmpty() ? byName(reports) : byCourse(reports, course);
  }

  private static List<Distribution> byCourse(List<FileReport> reports, Course course) {
    return course.quantities().stream()
        .map(quantity -> of(reports, quantity))
        .filter(distribution -> !distribution.values().isEmpty())
        .toList();
  }

  private static Distribution of(List<FileReport> reports, ExpectedQuantity quantity) {
    List<Value> values = new ArrayList<>();
    for (FileReport report : reports) {
      report.contents().quantities().stream()
          .filter(found -> found.quantity().equals(quantity.name()))
          .map(found -> new Value(report.file(), found.value(), found.uncertainty()))
          .forEach(values::add);
    }
    return new Distribution(quantity.name(), quantity.unit().text(), quantity.accepted(), values);
  }

  private static List<Distribution> byName(List<FileReport> reports) {
    Map<String, List<Value>> values = new TreeMap<>();
    Map<String, Name> names = new TreeMap<>();
    for (FileReport report : reports) {
      for (RecordSummary summary : report.contents().records()) {
        String key = summary.quantity().toLowerCase(Locale.ROOT).strip() + "\n" + summary.unit();
        if (!summary.quantity().isEmpty() && summary.value().isPresent()) {
          names.putIfAbsent(key, new Name(summary.quantity(), summary.unit()));
          values
              .computeIfAbsent(key, missing -> new ArrayList<>())
              .add(new Value(report.file(), summary.value().get(), summary.uncertainty()));
        }
      }
    }
    return values.entrySet().stream()
        .filter(entry -> workbooks(entry.getValue()) >= LEAST)
        .map(
            entry ->
                new Distribution(
                    names.get(entry.getKey()).quantity(),
                    names.get(entry.getKey()).unit(),
                    Optional.empty(),
                    entry.getValue()))
        .toList();
  }

  private static int workbooks(List<Value> values) {
    return new HashSet<>(values.stream().map(Value::file).toList()).size();
  }
}
