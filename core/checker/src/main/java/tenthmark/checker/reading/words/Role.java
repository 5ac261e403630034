package tenthmark.checker.reading.words;

/** What a heading or a label says that the cells beside it are. */
public enum Role {
  QUANTITY,
  SYMBOL,
  VALUE,
  UNIT,
  DIVISION,
  SPACING,
  ENDS,
  RESOLUTION,
  HAND_TIMING,
  REACTION,
  CYCLES,
  READING,
  PHYSICAL,
  INSTRUMENT,
  TIMING,
  REPEAT,
  UNCERTAINTY,
  RATIONALE,
  /** Where some give their reasons; it heads columns of other tables as well. */
  REMARK,
  RESULT,
  /** The mean of a series, a value that may have an uncertainty. */
  MEAN,
  /** The name of the instrument that was read. */
  APPARATUS,
  /** What accuracy a maker states, in percent or in digits. */
  SPECIFICATION,
  INDEX,
  COUNT,
  DATE,
  ACCEPTED,
  COMPARISON,
  STATISTIC,
  CONSTANT,
  /** A sum or another summary of the lines above. */
  SUMMARY;

  /** The key of its words in the vocabulary. */
  String key() {
    return "role." + name().toLowerCase(java.util.Locale.ROOT).replace('_', '.');
  }
}
