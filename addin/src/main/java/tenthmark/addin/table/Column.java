package tenthmark.addin.table;

import java.util.List;
import java.util.Optional;

/** The columns of the record table, from left to right. */
enum Column {
  QUANTITY(45),
  SYMBOL(20),
  VALUE(20),
  UNIT(27),
  DIVISION(19),
  SPACING(19, "fine"),
  ENDS(22, "1"),
  EXTENT(26),
  LAST_DIGIT(18),
  READING(22, "=IF({DIVISION}=\"\";\"\";LAB_READING({DIVISION};{SPACING};{ENDS}))"),
  PHYSICAL(26, "=IF({EXTENT}=\"\";\"\";LAB_FUZZY({EXTENT}))"),
  INSTRUMENT(28, "=IF({LAST_DIGIT}=\"\";\"\";LAB_DISPLAY({LAST_DIGIT}))"),
  UNCERTAINTY(
      32, "=IF({READING}&{PHYSICAL}&{INSTRUMENT}=\"\";\"\";LAB_TOTAL({READING}:{INSTRUMENT}))"),
  RESULT(
      56,
      "=IF(OR({VALUE}=\"\";{UNCERTAINTY}=\"\");\"\";LAB_RESULT({VALUE};{UNCERTAINTY};{UNIT}&\"\"))"),
  KIND(24),
  DUE_TO(50),
  SIZE(20);

  private final int width;
  private final String content;

  Column(int width) {
    this(width, null);
  }

  Column(int width, String content) {
    this.width = width;
    this.content = content;
  }

  /**
   * In hundredths of a millimetre; wide enough for each word of the heading in any language, in
   * fonts as wide as DejaVu Sans.
   */
  int width() {
    return width * 100;
  }

  /** What a new record holds in its first row; a name in braces stands for a cell of that row. */
  Optional<String> content() {
    return Optional.ofNullable(content);
  }

  /** The columns into which numbers are typed. */
  static List<Column> ofTypedNumbers() {
    return List.of(VALUE, DIVISION, ENDS, EXTENT, LAST_DIGIT);
  }

  /** Whether a cell of the column is calculated. */
  boolean isCalculated() {
    return content().filter(text -> text.startsWith("=")).isPresent();
  }
}
