package tenthmark.checker.grade;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a course's grade table looks like.
 *
 * @param maximum the score without any deduction, if the course gives scores
 * @param columns what stands under each heading, in their order
 */
public record GradeTableColumns(Optional<Double> maximum, Map<String, GradeColumn> columns) {

  /** The table of a course that does not say. */
  public static final GradeTableColumns STANDARD = standard(Optional.empty());

  /** Copies the columns. */
  public GradeTableColumns {
    columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
  }

  /** Columns that any course can use. */
  public static GradeTableColumns standard(Optional<Double> maximum) {
    Map<String, GradeColumn> columns = new LinkedHashMap<>();
    columns.put("id", GradeColumn.ID);
    columns.put("name", GradeColumn.NAME);
    columns.put("section", GradeColumn.SECTION);
    columns.put("score", GradeColumn.SCORE);
    columns.put("maximum", GradeColumn.MAXIMUM);
    columns.put("points lost", GradeColumn.POINTS_LOST);
    columns.put("status", GradeColumn.STATUS);
    return new GradeTableColumns(maximum, columns);
  }
}
