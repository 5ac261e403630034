package tenthmark.addin.table;

import java.util.Optional;

/** The columns of the record table, from left to right. */
enum Column {
  QUANTITY(45),
  SYMBOL(19),
  VALUE(20),
  UNIT(23),
  DIVISION(18),
  SPACING(18, "fine"),
  ENDS(20, "1"),
  EXTENT(22),
  LAST_DIGIT(18),
  READING(20, "=IF({DIVISION}=\"\";\"\";LAB_READING({DIVISION};{SPACING};{ENDS}))"),
  PHYSICAL(23, "=IF({EXTENT}=\"\";\"\";LAB_FUZZY({EXTENT}))"),
  INSTRUMENT(24, "=IF({LAST_DIGIT}=\"\";\"\";LAB_DISPLAY({LAST_DIGIT}))"),
  UNCERTAINTY(28, "=IF(COUNT({READING}:{INSTRUMENT})=0;\"\";LAB_TOTAL({READING}:{INSTRUMENT}))"),
  RESULT(
      48, "=IF(COUNT({VALUE};{UNCERTAINTY})<2;\"\";LAB_RESULT({VALUE};{UNCERTAINTY};{UNIT}&\"\"))"),
  KIND(24),
  DUE_TO(50),
  SIZE(17);

  private final int width;
  private final String content;

  Column(int width) {
    this(width, null);
  }

  Column(int width, String content) {
    this.width = width;
    this.content = content;
  }

  /** In hundredths of a millimetre; wide enough for each word of the heading in any language. */
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
