package tenthmark.checker.output;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.grade.Csv;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Severity;

/** A table for a gradebook: comma-separated values as RFC 4180 describes them. */
final class Gradebook {

  private static final List<String> HEADINGS =
      List.of(
          "workbook",
          "checked",
          "records",
          "numbers not read",
          "errors",
          "warnings",
          "notes",
          "points lost",
          "problem");

  private Gradebook() {}

  /** One line of headings and one for each workbook. */
  static String write(List<FileReport> reports, Function<Path, String> name) {
    return Stream.concat(Stream.of(HEADINGS), reports.stream().map(report -> row(report, name)))
        .map(Csv::row)
        .collect(Collectors.joining());
  }

  private static List<String> row(FileReport report, Function<Path, String> name) {
    return List.of(
        name.apply(report.file()),
        problem(report).isEmpty() ? "yes" : "no",
        String.valueOf(report.contents().records().size()),
        String.valueOf(report.contents().coverage().numbersNotRead()),
        String.valueOf(report.count(Severity.ERROR)),
        String.valueOf(report.count(Severity.WARNING)),
        String.valueOf(report.count(Severity.NOTE)),
        report.pointsLost().toPlainString(),
        problem(report));
  }

  /** Nothing for a workbook that was checked. */
  private static String problem(FileReport report) {
    return report
        .problem()
        .orElseGet(
            () -> report.contents().nothingWasRead() ? "no measurement record was recognised" : "");
  }
}
