package tenthmark.checker.grade;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A table of grades for a gradebook, one row for each student. */
public final class GradeTable {

  private GradeTable() {}

  /** One row of headings and one for each grade. */
  public static String write(List<Grade> grades, GradeTableColumns columns) {
    return Csv.row(List.copyOf(columns.columns().keySet()))
        + grades.stream()
            .map(
                grade ->
                    Csv.row(
                        columns.columns().values().stream()
                            .map(column -> value(grade, column))
                            .toList()))
            .collect(Collectors.joining());
  }

  private static String value(Grade grade, GradeColumn column) {
    return switch (column) {
      case ID -> grade.participant().student().id();
      case NAME -> grade.participant().student().name();
      case SECTION -> grade.participant().student().section();
      case SCORE -> number(grade.score());
      case MAXIMUM -> number(grade.maximum());
      case POINTS_LOST -> number(grade.pointsLost());
      case STATUS -> status(grade);
      case ATTEMPTS -> String.valueOf(grade.participant().attempts().size());
      case TIME ->
          grade
              .participant()
              .newest()
              .flatMap(newest -> newest.label().time())
              .map(Object::toString)
              .orElse("");
      case WORKBOOK ->
          grade.participant().newest().map(newest -> newest.file().toString()).orElse("");
    };
  }

  private static String status(Grade grade) {
    String status = grade.status().words();
    String listed = grade.participant().listed() ? status : status + ", not on the roster";
    return grade.reason().isEmpty() ? listed : listed + ": " + grade.reason();
  }

  private static String number(Optional<BigDecimal> number) {
    return number.map(value -> value.stripTrailingZeros().toPlainString()).orElse("");
  }
}
