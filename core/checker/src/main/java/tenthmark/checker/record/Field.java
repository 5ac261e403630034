package tenthmark.checker.record;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A part of a measurement record, and the words by which a column heading names it. */
public enum Field {
  QUANTITY(
      "quantity", "measured quantity", "quantity measured", "measurand", "measurement", "name"),
  SYMBOL("symbol"),
  VALUE("value", "measured value", "mean", "mean value", "best value"),
  UNIT("unit", "units"),
  DIVISION("division", "scale division", "smallest division"),
  SPACING("spacing", "spacing of marks", "mark spacing", "marks"),
  ENDS("ends", "ends read", "number of ends"),
  RESOLUTION("resolution", "display resolution", "display", "last digit"),
  HAND_TIMING("hand timing", "hand timed", "timed by hand", "by hand"),
  REACTION("reaction", "reaction time"),
  CYCLES("cycles", "number of cycles", "periods", "turns"),
  READING("reading", "reading uncertainty"),
  PHYSICAL("physical", "physical uncertainty"),
  INSTRUMENT("instrument", "instrument uncertainty", "instrumental"),
  TIMING("timing", "timing uncertainty"),
  REPEAT("repeat", "repeats", "repeat uncertainty", "repeatability", "scatter"),
  UNCERTAINTY("uncertainty", "total uncertainty", "total", "absolute uncertainty", "error", "±"),
  RATIONALE("rationale", "reason", "reasons", "justification"),
  RESULT("result", "record", "stated result");

  /** The fields that hold the size of a contribution to the uncertainty. */
  public static final List<Field> CONTRIBUTIONS =
      List.of(READING, PHYSICAL, INSTRUMENT, TIMING, REPEAT);

  private static final Set<Field> TELLING =
      Set.of(UNCERTAINTY, DIVISION, RESOLUTION, RATIONALE, PHYSICAL, REPEAT);

  private final List<String> words;

  Field(String... words) {
    this.words = List.of(words);
  }

  /** The words of each field. */
  static Map<Field, List<String>> words() {
    return Arrays.stream(values())
        .collect(Collectors.toMap(Function.identity(), field -> field.words));
  }

  /** Whether a column of this field tells measurements from other lists with values. */
  boolean isTelling() {
    return TELLING.contains(this);
  }

  /** The word that a sentence uses. */
  public String word() {
    return words.get(0);
  }
}
