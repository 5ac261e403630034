package tenthmark.checker.profile;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.checker.reading.TableGuide;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellRange;

/** The entries of the list of tables: how each is to be read. */
final class TablesSection {

  private static final String RANGE = "range";
  private static final String ROLES = "roles";

  /** The largest sheet of the office programs. */
  private static final int MOST_COLUMNS = 16_384;

  private static final int MOST_ROWS = 1_048_576;

  private static final Pattern CELLS =
      Pattern.compile("([A-Z]{1,3})([1-9]\\d{0,6}):([A-Z]{1,3})([1-9]\\d{0,6})");

  private static final Set<Field> VALUES = Set.of(Field.VALUE, Field.RESULT);
  private static final Map<String, Boolean> DIRECTIONS = new LinkedHashMap<>();
  private static final Map<String, Field> FIELDS = new LinkedHashMap<>();

  static {
    DIRECTIONS.put("down", false);
    DIRECTIONS.put("across", true);
    Arrays.stream(Field.values()).forEach(field -> FIELDS.put(field.word(), field));
  }

  private TablesSection() {}

  static Optional<TableGuide> read(Section section) {
    Optional<String> sheet = section.requiredText("sheet");
    Optional<String> cells = section.requiredText(RANGE);
    boolean across = section.choice("direction", DIRECTIONS).orElse(false);
    Optional<CellRange> range = cells.flatMap(text -> range(sheet.orElse(""), text, section));
    section.required(ROLES);
    Map<Integer, Field> fields = new HashMap<>();
    section
        .section(ROLES)
        .ifPresent(roles -> range.ifPresent(area -> read(roles, area, across, fields)));
    section.close();
    return sheet.isPresent() && !fields.isEmpty()
        ? range.map(area -> new TableGuide(area, across, fields))
        : Optional.empty();
  }

  private static Optional<CellRange> range(String sheet, String text, Section section) {
    Matcher cells = CELLS.matcher(text);
    if (cells.matches()) {
      CellRange range =
          new CellRange(
              sheet,
              column(cells.group(1)),
              Integer.parseInt(cells.group(2)) - 1,
              column(cells.group(3)),
              Integer.parseInt(cells.group(4)) - 1);
      if (range.left() <= range.right()
          && range.top() <= range.bottom()
          && range.right() < MOST_COLUMNS
          && range.bottom() < MOST_ROWS) {
        return Optional.of(range);
      }
    }
    section.valueProblem(
        RANGE, "range must be the first and the last cell of the records, such as A5:F12");
    return Optional.empty();
  }

  /** The number of a column, from 0 for A. */
  private static int column(String letters) {
    return letters.chars().reduce(0, (number, letter) -> 26 * number + letter - 'A' + 1) - 1;
  }

  private static void read(
      Section roles, CellRange range, boolean across, Map<Integer, Field> fields) {
    boolean allUsable = true;
    for (String key : roles.keys()) {
      Optional<Field> field = roles.choice(key, FIELDS);
      Optional<Integer> place =
          across ? line(key, range.top(), range.bottom()) : column(key, range);
      boolean twice = field.filter(fields::containsValue).isPresent();
      if (place.isEmpty()) {
        roles.keyProblem(
            key,
            across
                ? key + " must be the number of a row in the range"
                : key + " must be the letter of a column in the range");
      } else if (twice) {
        roles.valueProblem(key, field.get().word() + " stands here twice");
      } else {
        field.ifPresent(known -> fields.put(place.get(), known));
      }
      allUsable &= place.isPresent() && field.isPresent() && !twice;
    }
    if (allUsable && fields.values().stream().noneMatch(VALUES::contains)) {
      roles.problem("one of the roles must be value or result");
    }
  }

  private static Optional<Integer> line(String key, int first, int last) {
    return key.matches("[1-9]\\d{0,6}")
        ? Optional.of(Integer.parseInt(key) - 1).filter(row -> row >= first && row <= last)
        : Optional.empty();
  }

  private static Optional<Integer> column(String key, CellRange range) {
    return key.matches("[A-Z]{1,3}")
        ? Optional.of(column(key))
            .filter(column -> column >= range.left() && column <= range.right())
        : Optional.empty();
  }
}
