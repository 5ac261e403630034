package tenthmark.addin.table;

import java.util.Optional;

/**
 * The columns of the record table, from left to right. The headings are the words by which the
 * checker knows them, so they are the same in every language.
 */
enum Column {
  QUANTITY("Quantity", 45),
  SYMBOL("Symbol", 17),
  VALUE("Value", 20),
  UNIT("Unit", 23),
  DIVISION("Division", 18),
  SPACING("Spacing", 18, "fine"),
  ENDS("Ends", 13, "1"),
  EXTENT("Fuzzy extent", 18),
  LAST_DIGIT("Last digit", 18),
  READING("Reading", 20, "=IF({DIVISION}=\"\";\"\";LAB_READING({DIVISION};{SPACING};{ENDS}))"),
  PHYSICAL("Physical", 20, "=IF({EXTENT}=\"\";\"\";LAB_FUZZY({EXTENT}))"),
  INSTRUMENT("Instrument", 24, "=IF({LAST_DIGIT}=\"\";\"\";LAB_DISPLAY({LAST_DIGIT}))"),
  UNCERTAINTY(
      "Uncertainty",
      26,
      "=IF(COUNT({READING}:{INSTRUMENT})=0;\"\";LAB_TOTAL({READING}:{INSTRUMENT}))"),
  RESULT(
      "Result",
      48,
      "=IF(COUNT({VALUE};{UNCERTAINTY})<2;\"\";LAB_RESULT({VALUE};{UNCERTAINTY};{UNIT}&\"\"))"),
  KIND("Kind", 24),
  DUE_TO("Due to", 50),
  SIZE("Size", 16);

  private final String heading;
  private final int width;
  private final String content;

  Column(String heading, int width) {
    this(heading, width, null);
  }

  Column(String heading, int width, String content) {
    this.heading = heading;
    this.width = width;
    this.content = content;
  }

  String heading() {
    return heading;
  }

  /** In hundredths of a millimetre. */
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
