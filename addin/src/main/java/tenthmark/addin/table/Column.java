package tenthmark.addin.table;

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
  UNCERTAINTY(32, "=IF(COUNT({READING}:{INSTRUMENT})=0;\"\";LAB_TOTAL({READING}:{INSTRUMENT}))"),
  RESULT(
      56, "=IF(COUNT({VALUE};{UNCERTAINTY})<2;\"\";LAB_RESULT({VALUE};{UNCERTAINTY};{UNIT}&\"\"))"),
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

  /** Whether a cell of the column is calculated. */
  boolean isCalculated() {
    return content().filter(text -> text.startsWith("=")).isPresent();
  }
}
